package worthsaving.diagnosis;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import worthsaving.catalog.Catalogue;
import worthsaving.catalog.ShippedCatalogue;
import worthsaving.quantity.Probability;
import worthsaving.vehicle.Exposure;
import worthsaving.vehicle.Fact;
import worthsaving.vehicle.Listing;
import worthsaving.vehicle.Observation;
import worthsaving.vehicle.Observation.Sight;
import worthsaving.vehicle.Observation.Witness;
import worthsaving.vehicle.Vehicle;

class WitnessesTest {

    private static final Catalogue CATALOGUE = ShippedCatalogue.load();
    private static final SellerTrust TRUST = SellerTrust.USUAL;
    private static final Witnesses WITNESSES = new Witnesses(CATALOGUE, TRUST);

    private static Observation said(String subject, Sight sight) {
        return new Observation(subject, sight, Witness.SELLER);
    }

    private static Listing listing(String condition, Observation... observations) {
        Vehicle car = Vehicle.builder().year(Fact.known(2014)).condition(Fact.ofNullable(condition)).build();
        return new Listing("L", car, Fact.unknown(), LocalDate.of(2026, 1, 1), Fact.unknown(), Exposure.UNKNOWN,
                List.of(observations), "", "invented");
    }

    @Test
    void own_eyes_are_certain_and_a_seller_is_not() {
        Evidence evidence = WITNESSES.evidence(List.of(
                Observation.present("KNOCK_DEEP"), said("OIL_LIGHT_ON", Sight.PRESENT), said("HEAD_GASKET", Sight.PRESENT)));

        assertThat(evidence.findings()).containsEntry("KNOCK_DEEP", Likelihood.TRUE)
                .containsEntry("OIL_LIGHT_ON", TRUST.admitsFinding());
        assertThat(evidence.items()).containsEntry("HEAD_GASKET", TRUST.namesItem());
    }

    @Test
    void own_eyes_overrule_the_seller_in_any_order() {
        Observation seen = Observation.absent("KNOCK_DEEP");
        Observation told = said("KNOCK_DEEP", Sight.PRESENT);

        assertThat(WITNESSES.evidence(List.of(seen, told)).findings()).containsEntry("KNOCK_DEEP", Likelihood.FALSE);
        assertThat(WITNESSES.evidence(List.of(told, seen)).findings()).containsEntry("KNOCK_DEEP", Likelihood.FALSE);
    }

    @Test
    void unsure_says_nothing_and_nonsense_is_refused() {
        assertThat(WITNESSES.evidence(List.of(new Observation("KNOCK_DEEP", Sight.UNSURE, Witness.OWN_EYES))))
                .isEqualTo(Evidence.NONE);
        assertThatThrownBy(() -> WITNESSES.evidence(List.of(Observation.present("NONSENSE"))))
                .hasMessageContaining("NONSENSE");
    }

    @Test
    void silence_counts_most_from_a_seller_who_praises_and_least_beside_another_complaint() {
        Map<String, Probability> plain = WITNESSES.unmentioned(listing(null));
        Map<String, Probability> praised = WITNESSES.unmentioned(listing("excellent"));
        Map<String, Probability> broken = WITNESSES.unmentioned(listing(null, Observation.present("NO_CRANK")));

        assertThat(plain).containsEntry("KNOCKS", TRUST.mentions());
        assertThat(praised).containsEntry("KNOCKS", TRUST.mentionsPraising());
        assertThat(broken).containsEntry("KNOCKS", TRUST.mentionsFurther()).doesNotContainKey("NO_CRANK");
        assertThat(TRUST.mentionsPraising()).isGreaterThan(TRUST.mentions());
        assertThat(TRUST.mentions()).isGreaterThan(TRUST.mentionsFurther());
    }

    @Test
    void only_what_an_advert_would_name_can_be_left_out_of_it() {
        assertThat(WITNESSES.unmentioned(listing(null))).containsKey("OVERHEATS").doesNotContainKey("FILTER_METAL");
    }
}
