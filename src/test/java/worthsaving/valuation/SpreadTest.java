package worthsaving.valuation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import worthsaving.quantity.Seed;

class SpreadTest {

    private static TreeEnsemble constant(float value) {
        return new TreeEnsemble(new int[] {-1}, new float[] {value}, new long[0][], Encoder.WIDTH + 1);
    }

    private static Spread reach(float down, float up) {
        return new Spread(constant(down), constant(up), new double[0], new double[0][]);
    }

    @Test
    void reach_is_never_below_its_least_and_each_side_has_its_own() {
        float[] x = new float[Encoder.WIDTH + 1];

        assertThat(reach(-0.4f, 0.2f).reach(x)).containsExactly(new double[] {0.4, 0.2}, within(1e-6));
        assertThat(reach(0.1f, -0.1f).reach(x)).containsExactly(0.03, 0.03);
        assertThat(Spread.standardise(-0.2, new double[] {0.4, 0.2})).isEqualTo(-0.5);
        assertThat(Spread.standardise(0.2, new double[] {0.4, 0.2})).isEqualTo(1);
    }

    @Test
    void levels_run_from_half_a_percent_to_the_same_from_above() {
        assertThat(Spread.LEVELS).hasSize(101).isSorted();
        assertThat(Spread.LEVELS[10]).isEqualTo(0.1);
        assertThat(Spread.LEVELS[50]).isEqualTo(0.5);
        assertThat(Spread.LEVELS[90]).isEqualTo(0.9);
    }

    /** Mondrian bands: when cheap cars scatter twice as much as the reach says, each band still covers 80 %. */
    @Test
    void every_band_gets_its_own_coverage() {
        SplittableRandom random = Seed.DEFAULT.derive("bands").generator();
        int n = 20_000;
        double[] middle = random.doubles(n, 8, 10).toArray();
        double[] scores = new double[n];
        for (int i = 0; i < n; i++) {
            scores[i] = random.nextGaussian() * (middle[i] < 9 ? 2 : 1);
        }
        Spread one = SpreadFitter.calibrate(reach(-0.3f, 0.3f), middle, scores, 1);
        Spread five = SpreadFitter.calibrate(reach(-0.3f, 0.3f), middle, scores, 5);

        assertThat(share(five, 8.2, 2)).isCloseTo(0.8, within(0.02));
        assertThat(share(five, 9.8, 1)).isCloseTo(0.8, within(0.02));
        assertThat(share(one, 8.2, 2)).isLessThan(0.74);
        assertThat(share(one, 9.8, 1)).isGreaterThan(0.86);
        assertThat(five.edges()).hasSize(4).isSorted();
    }

    /** Share of fresh residuals of scale 0.3 x {@code scale} inside the 80 % interval at {@code middle}. */
    private static double share(Spread spread, double middle, double scale) {
        SplittableRandom random = Seed.DEFAULT.derive("fresh").generator();
        double[] residuals = spread.residuals(middle, new double[] {0.3, 0.3});
        int n = 20_000;
        long inside = random.ints(n).mapToDouble(i -> 0.3 * scale * random.nextGaussian())
                .filter(r -> r >= residuals[10] && r <= residuals[90])
                .count();
        return (double) inside / n;
    }

    @Test
    void a_distribution_of_residuals_rises() {
        SplittableRandom random = Seed.DEFAULT.derive("rises").generator();
        double[] middle = random.doubles(500, 8, 10).toArray();
        double[] scores = Arrays.stream(middle).map(m -> random.nextGaussian()).toArray();
        Spread spread = SpreadFitter.calibrate(reach(-0.5f, 0.2f), middle, scores, 5);

        for (double m = 7.5; m < 10.5; m += 0.1) {
            assertThat(spread.residuals(m, new double[] {0.5, 0.2})).isSorted();
        }
    }

    /** Variances add: 3, 4, 5 in units of the normal's 90 % point. */
    @Test
    void doubt_widens_the_reach_by_adding_variance() {
        double z = 1.2815515655446004;

        assertThat(Spread.widened(new double[] {3 * z, 0}, 4)).containsExactly(new double[] {5 * z, 4 * z}, within(1e-12));
    }
}
