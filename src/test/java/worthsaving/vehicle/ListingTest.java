package worthsaving.vehicle;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import worthsaving.quantity.Distance;
import worthsaving.quantity.Money;
import worthsaving.vehicle.Observation.Sight;
import worthsaving.vehicle.Observation.Witness;

class ListingTest {

    private static final Vehicle CAR = Vehicle.builder()
            .year(Fact.known(2010)).make(Fact.known("ford")).model(Fact.known("focus")).trim(Fact.known("se"))
            .odometer(Fact.known(Distance.ofMiles(90_000)))
            .powertrain(new Powertrain(Fact.known(Powertrain.Engine.PETROL), Fact.unknown(), Fact.unknown(), Fact.unknown()))
            .engineLitres(Fact.known(2.0)).cylinders(Fact.known(4)).body(Fact.known("saloon"))
            .condition(Fact.known("fair")).title(TitleBrand.CLEAN).vin(Fact.known(new Vin("1M8GDM9AXKP042788"))).build();

    private static Listing seen(Observation... observations) {
        return new Listing("A", CAR, Fact.known(Money.usd(900)), LocalDate.of(2026, 3, 1), Fact.unknown(),
                Exposure.UNKNOWN, List.of(observations), "invented", "row 1");
    }

    private static Observation of(String subject, Sight sight, Witness witness) {
        return new Observation(subject, sight, witness);
    }

    @Test
    void what_was_seen_stays_and_what_is_new_is_added() {
        Listing before = seen(Observation.present("knock"), Observation.absent("smoke"));

        Listing after = before.withSeen(List.of(Observation.absent("knock"), Observation.present("leak")));

        assertThat(after.observations()).containsExactly(
                Observation.present("knock"), Observation.absent("smoke"), Observation.present("leak"));
        assertThat(before.observations()).as("left as it was").hasSize(2);
        assertThat(after).usingRecursiveComparison().ignoringFields("observations").isEqualTo(before);
    }

    @Test
    void what_was_unsure_or_not_looked_at_gives_way() {
        Listing before = seen(of("knock", Sight.UNSURE, Witness.OWN_EYES), of("smoke", Sight.NOT_LOOKED_AT, Witness.OWN_EYES));

        assertThat(before.withSeen(List.of(Observation.present("knock"), Observation.absent("smoke"))).observations())
                .containsExactly(Observation.present("knock"), Observation.absent("smoke"));
    }

    @Test
    void own_eyes_stand_beside_the_sellers_word() {
        Observation told = of("knock", Sight.ABSENT, Witness.SELLER);
        Observation unsure = of("smoke", Sight.UNSURE, Witness.SELLER);

        assertThat(seen(told, unsure).withSeen(List.of(Observation.present("knock"), Observation.present("smoke")))
                .observations())
                .containsExactly(told, unsure, Observation.present("knock"), Observation.present("smoke"));
    }

    @Test
    void a_car_copied_by_its_builder_is_equal() {
        assertThat(CAR.toBuilder().build()).isEqualTo(CAR);
        assertThat(CAR.toBuilder().cylinders(Fact.known(6)).build().cylinders()).isEqualTo(Fact.known(6));
        assertThat(Vehicle.builder().build().year()).isEqualTo(Fact.unknown());
    }

    @Test
    void age_is_counted_from_the_middle_of_the_model_year() {
        assertThat(CAR.ageYears(LocalDate.of(2020, 7, 2)).orElseThrow()).isCloseTo(10, within(0.003));
        assertThat(CAR.ageYears(LocalDate.of(2010, 1, 1)).orElseThrow()).as("never below zero").isZero();
        assertThat(CAR.ageYears(LocalDate.of(2011, 1, 1)).orElseThrow()).isCloseTo(0.5, within(1e-12));
        assertThat(Vehicle.builder().build().ageYears(LocalDate.of(2020, 1, 1))).isEmpty();
    }

    @Test
    void a_car_has_a_short_name_however_little_is_known() {
        assertThat(CAR.label()).isEqualTo("2010 ford focus");
        assertThat(Vehicle.builder().make(Fact.known("ford")).build().label()).isEqualTo("ford car of unknown model");
        assertThat(Vehicle.builder().build().label()).isEqualTo("car of unknown model");
    }

    @Test
    void exposure_not_told_is_unknown() {
        Exposure exposure = new Exposure(Map.of(Exposure.Hazard.MISFIRE, Exposure.Level.DRIVEN_ON));

        assertThat(exposure.level(Exposure.Hazard.MISFIRE)).isEqualTo(Exposure.Level.DRIVEN_ON);
        assertThat(exposure.level(Exposure.Hazard.OVERHEATING)).isEqualTo(Exposure.Level.UNKNOWN);
    }
}
