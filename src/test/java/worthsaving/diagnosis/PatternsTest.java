package worthsaving.diagnosis;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.BitSet;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import worthsaving.catalog.Catalogue;
import worthsaving.catalog.ShippedCatalogue;
import worthsaving.quantity.Seed;
import worthsaving.vehicle.Exposure;
import worthsaving.vehicle.Powertrain;

class PatternsTest {

    private static final Catalogue CATALOGUE = ShippedCatalogue.load();
    private static final FailureNetwork NETWORK =
            FailureNetwork.of(CATALOGUE, SmallCatalogue.CAR, Exposure.UNKNOWN, SmallCatalogue.TODAY);

    private static final Evidence KNOCKS = Evidence.NONE
            .withFinding("KNOCKS", Likelihood.TRUE)
            .withFinding("OIL_LIGHT_ON", Likelihood.TRUE)
            .withFinding("CRANKS_NO_START", Likelihood.TRUE)
            .withFinding("OVERHEATS", Likelihood.FALSE);

    private static final int POINTS = 1 << 14;

    private static double share(FailurePatterns patterns, int... items) {
        return patterns.patterns().stream()
                        .filter(p -> IntStream.of(items).allMatch(p::get))
                        .count()
                / (double) patterns.patterns().size();
    }

    @Test
    void draws_converge_to_marginals_and_pairs() {
        Diagnosis diagnosis = NETWORK.diagnose(KNOCKS);
        FailurePatterns patterns = diagnosis.patterns(PatternSettings.USUAL.withPoints(POINTS));
        double threeStandardErrors = 3 * 0.5 / Math.sqrt(POINTS);

        assertThat(patterns.drawn()).isTrue();
        assertThat(patterns.enumerated()).isEqualTo(1);
        assertThat(patterns.patterns()).hasSize(POINTS);
        assertThat(patterns.weights()).containsOnly(1.0 / POINTS);
        List<Belief> beliefs = diagnosis.beliefs();
        for (int i = 0; i < beliefs.size(); i++) {
            assertThat(share(patterns, i))
                    .as(beliefs.get(i).item())
                    .isCloseTo(beliefs.get(i).posterior().value(), within(threeStandardErrors));
        }
        int bearing = NETWORK.items().indexOf("ROD_BEARING");
        Diagnosis withBearing = NETWORK.diagnose(KNOCKS.withItem("ROD_BEARING", Likelihood.TRUE));
        double failed = diagnosis.belief("ROD_BEARING").posterior().value();
        for (int i = 0; i < beliefs.size(); i++) {
            double pair = failed * withBearing.belief(beliefs.get(i).item()).posterior().value();
            assertThat(share(patterns, i, bearing)).isCloseTo(pair, within(threeStandardErrors));
        }
    }

    @Test
    void quasi_random_draws_beat_independent_ones() {
        Diagnosis diagnosis = NETWORK.diagnose(KNOCKS);
        FailurePatterns patterns = diagnosis.patterns(PatternSettings.USUAL);
        double squares = 0;
        double independent = 0;
        for (int i = 0; i < NETWORK.items().size(); i++) {
            double p = diagnosis.beliefs().get(i).posterior().value();
            squares += Math.pow(share(patterns, i) - p, 2);
            independent += p * (1 - p) / patterns.patterns().size();
        }

        assertThat(squares).isLessThan(independent / 2);
    }

    @Test
    void same_seed_same_draws() {
        PatternSettings few = PatternSettings.USUAL.withPoints(256);
        List<BitSet> first = NETWORK.diagnose(KNOCKS).patterns(few).patterns();

        assertThat(NETWORK.diagnose(KNOCKS).patterns(few).patterns()).isEqualTo(first);
        assertThat(NETWORK.diagnose(KNOCKS).patterns(PatternSettings.USUAL).patterns().subList(0, 256))
                .isEqualTo(first);
        assertThat(NETWORK.diagnose(KNOCKS).patterns(few.withSeed(new Seed(1))).patterns()).isNotEqualTo(first);
    }

    @Test
    void small_changes_of_evidence_change_few_draws() {
        Evidence doubtful = KNOCKS.withFinding("KNOCKS", new Likelihood(0.90, 0.050));
        Evidence slightlyMore = KNOCKS.withFinding("KNOCKS", new Likelihood(0.90, 0.051));
        List<BitSet> one = NETWORK.diagnose(doubtful).patterns(PatternSettings.USUAL).patterns();
        List<BitSet> other = NETWORK.diagnose(slightlyMore).patterns(PatternSettings.USUAL).patterns();

        assertThat(IntStream.range(0, one.size()).filter(j -> !one.get(j).equals(other.get(j))).count())
                .isLessThan(one.size() / 50);
    }

    @Test
    void an_item_keeps_its_numbers_from_car_to_car() {
        FailureNetwork open = FailureNetwork.of(
                CATALOGUE,
                SmallCatalogue.CAR.toBuilder().powertrain(Powertrain.UNKNOWN).build(),
                Exposure.UNKNOWN,
                SmallCatalogue.TODAY);
        PatternSettings settings = PatternSettings.USUAL.withPoints(512);
        FailurePatterns known = NETWORK.diagnose(Evidence.NONE).patterns(settings);
        FailurePatterns unknown = open.diagnose(Evidence.NONE).patterns(settings);
        int here = NETWORK.items().indexOf("WHEEL_BRG");
        int there = open.items().indexOf("WHEEL_BRG");

        assertThat(here).isNotNegative();
        for (int j = 0; j < 512; j++) {
            assertThat(known.patterns().get(j).get(here)).isEqualTo(unknown.patterns().get(j).get(there));
        }
    }

    @Test
    void few_patterns_are_enumerated_best_first() {
        FailureNetwork small = new SmallCatalogue().item("a", 0.1).item("b", 0.3).network();
        FailurePatterns patterns = small.diagnose(Evidence.NONE).patterns(PatternSettings.USUAL);

        assertThat(patterns.drawn()).isFalse();
        assertThat(patterns.items()).containsExactly("a", "b");
        assertThat(patterns.patterns().stream().map(BitSet::toString).toList())
                .containsExactly("{}", "{1}", "{0}", "{0, 1}");
        assertThat(patterns.weights()).containsExactly(new double[] {0.63, 0.27, 0.07, 0.03}, within(1e-12));
        assertThat(patterns.enumerated()).isCloseTo(1, within(1e-12));
        PatternSettings tight = new PatternSettings(3, 0.999, 8, Seed.DEFAULT);
        assertThat(small.diagnose(Evidence.NONE).patterns(tight).drawn()).isTrue();
    }

    @Test
    void settings_are_checked() {
        assertThatThrownBy(() -> new PatternSettings(1, 0, 1, Seed.DEFAULT)).hasMessageContaining("mass");
        assertThatThrownBy(() -> new PatternSettings(1, 0.9, 0, Seed.DEFAULT)).hasMessageContaining("point");
    }
}
