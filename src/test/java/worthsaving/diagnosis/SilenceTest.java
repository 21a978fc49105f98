package worthsaving.diagnosis;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.BitSet;
import java.util.Map;
import org.junit.jupiter.api.Test;
import worthsaving.catalog.Catalogue;
import worthsaving.quantity.Probability;
import worthsaving.vehicle.Exposure;

/** A finding that the seller would have told of and did not. Expected values by hand from the definition. */
class SilenceTest {

    private static final double PRIOR = 0.2;
    private static final double LINK = 0.9;
    private static final double LEAK = 0.05;
    private static final double MENTION = 0.7;
    private static final Catalogue CATALOGUE = new SmallCatalogue()
            .item("BEARING", PRIOR)
            .finding("KNOCKS", LEAK)
            .shows("BEARING", "KNOCKS", LINK)
            .build();

    private static FailureNetwork silent(double mention) {
        return FailureNetwork.of(CATALOGUE, SmallCatalogue.CAR, Exposure.UNKNOWN, SmallCatalogue.TODAY,
                Map.of("KNOCKS", Probability.of(mention)));
    }

    @Test
    void silence_lowers_the_item_by_the_chance_of_being_told() {
        double failed = PRIOR * (1 - LEAK * MENTION) * (1 - LINK * MENTION);
        double sound = (1 - PRIOR) * (1 - LEAK * MENTION);

        double posterior = silent(MENTION).diagnose(Evidence.NONE).belief("BEARING").posterior().value();

        assertThat(posterior).isCloseTo(failed / (failed + sound), within(1e-12));
    }

    @Test
    void a_seller_who_tells_everything_makes_silence_an_absence() {
        double absent = FailureNetwork.of(CATALOGUE, SmallCatalogue.CAR, Exposure.UNKNOWN, SmallCatalogue.TODAY)
                .diagnose(Evidence.NONE.withFinding("KNOCKS", Likelihood.FALSE))
                .belief("BEARING").posterior().value();

        assertThat(silent(1).diagnose(Evidence.NONE).belief("BEARING").posterior().value())
                .isCloseTo(absent, within(1e-12));
        assertThat(silent(MENTION)
                        .diagnose(Evidence.NONE.withFinding("KNOCKS", Likelihood.FALSE))
                        .belief("BEARING").posterior().value())
                .as("looked at and absent: silence adds nothing")
                .isCloseTo(absent, within(1e-12));
    }

    /** P(knocks | failed, not told) = 1 - (1 - leak)(1 - link) / ((1 - leak m)(1 - link m)). */
    @Test
    void what_was_not_told_may_still_be_met() {
        BitSet failed = new BitSet();
        failed.set(0);
        double expected = 1 - (1 - LEAK) * (1 - LINK) / ((1 - LEAK * MENTION) * (1 - LINK * MENTION));

        assertThat(silent(MENTION).findingChance("KNOCKS", failed)).isCloseTo(expected, within(1e-12));
    }

    @Test
    void looking_after_all_and_meeting_it_counts_fully_against_the_seller() {
        double joint = PRIOR * ((1 - LEAK * MENTION) * (1 - LINK * MENTION) - (1 - LEAK) * (1 - LINK));
        double other = (1 - PRIOR) * ((1 - LEAK * MENTION) - (1 - LEAK));

        double posterior = silent(MENTION).diagnose(Evidence.NONE.withFinding("KNOCKS", Likelihood.TRUE))
                .belief("BEARING").posterior().value();

        assertThat(posterior).isCloseTo(joint / (joint + other), within(1e-12));
    }

    @Test
    void an_unknown_finding_is_refused() {
        assertThatThrownBy(() -> FailureNetwork.of(CATALOGUE, SmallCatalogue.CAR, Exposure.UNKNOWN,
                        SmallCatalogue.TODAY, Map.of("NONSENSE", Probability.of(0.5))))
                .hasMessageContaining("NONSENSE");
    }
}
