package worthsaving.diagnosis;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.BitSet;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import worthsaving.catalog.Applicability;
import worthsaving.catalog.Catalogue;
import worthsaving.diagnosis.inference.BucketTree;
import worthsaving.quantity.Seed;
import worthsaving.vehicle.Exposure;
import worthsaving.vehicle.Fact;
import worthsaving.vehicle.Powertrain;

class SampledPosteriorTest {

    private static final Applicability CHAIN_ONLY = new Applicability(
            Applicability.ALL.engines(),
            Set.of(Powertrain.TimingDrive.CHAIN),
            Applicability.ALL.gearboxes(),
            Applicability.ALL.drives());

    private static final Catalogue CATALOGUE = new SmallCatalogue()
            .item("chain", 0.3, "", CHAIN_ONLY)
            .item("pickup", 0.1)
            .item("bearing", 0.15)
            .item("fresh water", 0.2, "flood", Applicability.ALL)
            .item("salt water", 0.1, "flood", Applicability.ALL)
            .damage("chain", "pickup", 0.35)
            .damage("pickup", "bearing", 0.30)
            .damage("salt water", "bearing", 0.6)
            .finding("light", 0.02)
            .finding("damp", 0.10)
            .shows("pickup", "light", 0.70)
            .shows("bearing", "light", 0.45)
            .shows("fresh water", "damp", 0.8)
            .shows("salt water", "damp", 0.8)
            .build();

    private static final Evidence EVIDENCE = Evidence.NONE
            .withFinding("light", Likelihood.TRUE)
            .withFinding("damp", new Likelihood(0.8, 0.3))
            .withItem("bearing", new Likelihood(0.6, 0.4));

    private static FailureModel model() {
        Powertrain car = new Powertrain(
                Fact.known(Powertrain.Engine.PETROL),
                Fact.unknown(),
                Fact.known(Powertrain.Gearbox.MANUAL),
                Fact.known(Powertrain.Drive.FRONT));
        PowertrainBits bits = new PowertrainBits(Powertrain.Engine.PETROL, car, PowertrainShares.USUAL);
        return FailureModel.of(
                CATALOGUE, bits, Exposure.UNKNOWN, CarAge.of(SmallCatalogue.CAR, SmallCatalogue.TODAY), Map.of());
    }

    private static Posterior exact(Evidence evidence) {
        return ExactPosterior.of(model(), evidence, 5, BucketTree.WIDTH_GUARD).orElseThrow();
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5})
    void stays_within_its_stated_error(long seed) {
        SampledPosterior sampled = SampledPosterior.of(model(), EVIDENCE, 20_000, new Seed(seed));
        Posterior exact = exact(EVIDENCE);

        assertThat(sampled.error()).isBetween(0.003, 0.02);
        for (int item = 0; item < 5; item++) {
            assertThat(sampled.marginal(item)).isCloseTo(exact.marginal(item), within(1.5 * sampled.error()));
        }
        assertThat(sampled.logWeight()).isCloseTo(exact.logWeight(), within(0.03));
        double[] pair = sampled.joint(new int[] {1, 2});
        double[] expected = exact.joint(new int[] {1, 2});
        assertThat(pair).containsExactly(expected, within(1.5 * sampled.error()));
        assertThat(pair[0] + pair[1] + pair[2] + pair[3]).isCloseTo(1, within(1e-9));
    }

    @Test
    void predicts_and_resamples() {
        Evidence half = EVIDENCE.withoutFinding("light");
        SampledPosterior sampled = SampledPosterior.of(model(), half, 20_000, new Seed(9));

        assertThat(sampled.chance("light")).isCloseTo(exact(half).chance("light"), within(0.02));
        assertThat(sampled.states().covering(1000, 0.9)).isEmpty();
        PatternPoints points = new PatternPoints(32, Seed.DEFAULT);
        Function<PatternPoints, BitSet> draws = sampled.states().draws();
        int bearing = 0;
        for (int j = 0; j < 4096; j++) {
            points.next();
            BitSet pattern = draws.apply(points);
            assertThat(pattern.get(3) && pattern.get(4)).isFalse();
            bearing += pattern.get(2) ? 1 : 0;
        }
        assertThat(bearing / 4096.0).isCloseTo(sampled.marginal(2), within(0.01));
    }

    @Test
    void settled_items_stay_settled() {
        Evidence settled = EVIDENCE
                .withItem("salt water", Likelihood.TRUE)
                .withItem("pickup", Likelihood.FALSE);
        SampledPosterior sampled = SampledPosterior.of(model(), settled, 20_000, new Seed(3));

        assertThat(sampled.marginal(4)).isCloseTo(1, within(1e-9));
        assertThat(sampled.marginal(3)).isZero();
        assertThat(sampled.marginal(1)).isZero();
        assertThat(sampled.marginal(2)).isCloseTo(exact(settled).marginal(2), within(1.5 * sampled.error()));
    }
}
