package worthsaving.ranking;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static worthsaving.ranking.Lots.listing;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import worthsaving.catalog.Onset;
import worthsaving.quantity.Distance;
import worthsaving.quantity.Money;
import worthsaving.quantity.Probability;
import worthsaving.repair.Preventive;
import worthsaving.vehicle.Observation;

/** One invented car of 2015 with 110,000 miles on 15 January 2026. */
class HoldingTest {

    private static final Appraisal GASKET = Lots.appraise(listing("A", 1_500, Observation.present("HEAD_GASKET")));

    private static Map<String, Probability> needed(double years, double miles) {
        return new Holding(years, miles).needed(Lots.CATALOGUE, GASKET.listing(), GASKET.diagnosis());
    }

    /** Weibull: with event chance e and survival S, (F(t + h) - F(t)) / (1 - F(t)) = 1 - S(t + h) / S(t). */
    @Test
    void the_chance_is_that_of_the_weibull_given_that_it_has_lasted_so_far() {
        Onset onset = Lots.CATALOGUE.itemsById().get("WATER_PUMP").onset();
        double age = GASKET.listing().vehicle().ageYears(Lots.TODAY).orElseThrow();
        double w = onset.mileageShare();
        double wear = (1 - w) * age + w * 110_000 / 12_000;
        double hazard = 1 - Math.exp(Math.pow(wear / onset.scaleYears(), onset.shape())
                - Math.pow((wear + 2) / onset.scaleYears(), onset.shape()));
        double p = GASKET.diagnosis().belief("WATER_PUMP").posterior().value();

        assertThat(needed(2, 12_000).get("WATER_PUMP").value()).isCloseTo(p + (1 - p) * hazard, within(1e-9));
    }

    @Test
    void longer_and_farther_never_lowers_a_chance_and_never_falls_below_what_is_believed_now() {
        needed(1, 12_000).forEach((item, p) -> {
            assertThat(p).as(item).isLessThanOrEqualTo(needed(3, 12_000).get(item));
            assertThat(p).as(item).isLessThanOrEqualTo(needed(1, 30_000).get(item));
            assertThat(p.value()).as(item)
                    .isGreaterThanOrEqualTo(GASKET.diagnosis().belief(item).posterior().value() - 1e-12);
        });
    }

    @Test
    void a_car_past_the_last_wear_shows_what_is_believed_now() {
        Appraisal old = Lots.appraise(listing("B", Lots.car(1970), Money.usd(900), Observation.present("NO_CRANK")));
        Onset onset = Lots.CATALOGUE.itemsById().get("COLL_STRUCT").onset();

        assertThat(onset.prior(55, Distance.ofMiles(800_000))).isEqualTo(onset.prior(60, Distance.ofMiles(900_000)));
        assertThat(new Holding(5, 12_000).needed(Lots.CATALOGUE, old.listing(), old.diagnosis())).hasSameSizeAs(
                old.diagnosis().beliefs());
    }

    @Test
    void with_the_head_off_what_lies_open_is_weighed_and_more_pays_the_longer_it_is_kept() {
        List<Preventive> soon = Lots.JUDGE.whileInThere(GASKET, new Holding(0.25, 12_000));
        List<Preventive> lasting = Lots.JUDGE.whileInThere(GASKET, new Holding(8, 15_000));

        assertThat(soon).extracting(Preventive::item).isNotEmpty().doesNotContain("HEAD_GASKET")
                .hasSameSizeAs(lasting);
        assertThat(soon).allSatisfy(p -> {
            assertThat(p.now()).isLessThan(p.later());
            assertThat(p.pays()).isEqualTo(p.needed().value() * p.later().amount() > p.now().amount());
        });
        assertThat(lasting.stream().filter(Preventive::pays).count())
                .isGreaterThan(soon.stream().filter(Preventive::pays).count());
    }

    @Test
    void nonsense_is_refused() {
        assertThatThrownBy(() -> new Holding(0, 12_000)).hasMessageContaining("years");
        assertThatThrownBy(() -> new Holding(1, -1)).hasMessageContaining("miles");
    }
}
