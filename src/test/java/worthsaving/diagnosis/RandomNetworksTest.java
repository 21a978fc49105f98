package worthsaving.diagnosis;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import worthsaving.catalog.FindingKind;
import worthsaving.diagnosis.inference.BucketTree;
import worthsaving.vehicle.Powertrain;

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

    /** As small tables as possible, so that everything runs through OR variables and splits. */
    @Test
    void posteriors_with_every_noisy_or_split() {
        for (int number = 0; number < 200; number++) {
            RandomNetwork random = RandomNetwork.of(number, 11);
            BruteForce after = enumerated(random, random.evidence());
            Posterior posterior = split(random);
            if (after.total() == 0) {
                assertThat(posterior.possible()).isFalse();
                continue;
            }
            assertThat(posterior.logWeight()).isCloseTo(Math.log(after.total()), within(TOLERANCE));
            for (int i = 0; i < random.catalogue().items().size(); i++) {
                assertThat(posterior.marginal(i)).isCloseTo(after.marginal("I" + i), within(TOLERANCE));
            }
        }
    }

    private static Posterior split(RandomNetwork random) {
        PowertrainBits powertrain = new PowertrainBits(
                Powertrain.Engine.PETROL_TURBO, SmallCatalogue.CAR.powertrain(), PowertrainShares.USUAL);
        CarAge age = CarAge.of(SmallCatalogue.CAR, SmallCatalogue.TODAY);
        FailureModel model = FailureModel.of(random.catalogue(), powertrain, random.exposure(), age, Map.of());
        return ExactPosterior.of(model, random.evidence(), 2, BucketTree.WIDTH_GUARD).orElseThrow();
    }

    @Test
    void influences_by_leaving_one_out() {
        for (int number = 0; number < 60; number++) {
            RandomNetwork random = RandomNetwork.of(number, 7);
            if (!(network(random).attempt(random.evidence()) instanceof Outcome.Explained found)) {
                continue;
            }
            for (String finding : random.evidence().findings().keySet()) {
                BruteForce without = enumerated(random, random.evidence().withoutFinding(finding));
                BruteForce with = enumerated(random, random.evidence());
                for (Belief belief : found.diagnosis().beliefs()) {
                    double expected = logit(with.marginal(belief.item())) - logit(without.marginal(belief.item()));
                    if (Double.isFinite(expected)) {
                        assertThat(found.diagnosis().influences(belief.item()))
                                .filteredOn(i -> i.subject().equals(finding))
                                .singleElement()
                                .satisfies(i -> assertThat(i.logRatio()).isCloseTo(expected, within(1e-7)));
                    }
                }
            }
        }
    }

    private static double logit(double p) {
        return Math.log(p / (1 - p));
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
