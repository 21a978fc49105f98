package worthsaving.diagnosis;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import worthsaving.catalog.FindingKind;

/** Everything the engine says against the sum over all states, on 500 random networks. */
class RandomNetworksTest {

    private static final double TOLERANCE = 1e-9;
    private static final int NETWORKS = 500;

    /** The car is of 2016, counted from the middle of that year to the first day of 2026. */
    private static final double AGE = 9.5;

    private static FailureNetwork network(RandomNetwork random) {
        return FailureNetwork.of(
                random.catalogue(), SmallCatalogue.CAR, random.exposure(), SmallCatalogue.TODAY);
    }

    private static BruteForce enumerated(RandomNetwork random, Evidence evidence) {
        return new BruteForce(random.catalogue(), random.exposure(), AGE, evidence);
    }

    @Test
    void posteriors_predictions_and_evidence() {
        int explained = 0;
        int impossible = 0;
        for (int number = 0; number < NETWORKS; number++) {
            RandomNetwork random = RandomNetwork.of(number, number % 25 == 0 ? 16 : 11);
            BruteForce before = enumerated(random, Evidence.NONE);
            BruteForce after = enumerated(random, random.evidence());
            Outcome outcome = network(random).attempt(random.evidence());
            if (outcome instanceof Outcome.Explained found) {
                check(random, found.diagnosis(), before, after);
                explained++;
            } else {
                assertThat(after.total()).isZero();
                impossible++;
            }
        }
        assertThat(explained).isGreaterThan(350);
        assertThat(impossible).isPositive();
    }

    private static void check(RandomNetwork random, Diagnosis diagnosis, BruteForce before, BruteForce after) {
        for (Belief belief : diagnosis.beliefs()) {
            assertThat(belief.prior().value()).isCloseTo(before.marginal(belief.item()), within(TOLERANCE));
            assertThat(belief.posterior().value()).isCloseTo(after.marginal(belief.item()), within(TOLERANCE));
        }
        assertThat(diagnosis.logEvidence())
                .isCloseTo(Math.log(after.total() / before.total()), within(TOLERANCE));
        for (FindingKind finding : random.catalogue().findings()) {
            if (!random.evidence().findings().containsKey(finding.id())) {
                assertThat(diagnosis.predictive(finding.id()).value())
                        .isCloseTo(after.chance(finding.id()), within(TOLERANCE));
            }
        }
    }

    @Test
    void patterns_in_order_of_probability() {
        for (int number = 0; number < 100; number++) {
            RandomNetwork random = RandomNetwork.of(number, 9);
            if (!(network(random).attempt(random.evidence()) instanceof Outcome.Explained found)) {
                continue;
            }
            BruteForce after = enumerated(random, random.evidence());
            FailurePatterns patterns = found.diagnosis().patterns(PatternSettings.USUAL);
            List<Double> expected = IntStream.range(0, 1 << random.catalogue().items().size())
                    .mapToObj(after::probability)
                    .sorted(Comparator.reverseOrder())
                    .toList();

            assertThat(patterns.drawn()).isFalse();
            assertThat(patterns.enumerated()).isBetween(0.999, 1.0);
            List<Double> weights = new ArrayList<>();
            for (int k = 0; k < patterns.patterns().size(); k++) {
                double weight = patterns.weights()[k] * patterns.enumerated();
                long[] bits = patterns.patterns().get(k).toLongArray();
                assertThat(weight)
                        .isCloseTo(after.probability(bits.length == 0 ? 0 : (int) bits[0]), within(TOLERANCE));
                weights.add(weight);
            }
            for (int k = 0; k < weights.size(); k++) {
                assertThat(weights.get(k)).isCloseTo(expected.get(k), within(TOLERANCE));
            }
        }
    }
}
