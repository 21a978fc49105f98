package worthsaving.valuation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.apache.commons.statistics.distribution.NormalDistribution;
import org.junit.jupiter.api.Test;
import worthsaving.quantity.Distribution;

class QuantileDistributionTest {

    private static final Distribution TWO_PIECES =
            new QuantileDistribution(new double[] {0, 0.5, 1}, new double[] {0, 10, 40});

    /** By hand: half uniform on [0, 10], half uniform on [10, 40]. */
    @Test
    void mean_and_variance_are_those_of_the_pieces() {
        assertThat(TWO_PIECES.mean()).isCloseTo(15, within(1e-12));
        assertThat(TWO_PIECES.variance()).isCloseTo(0.5 * 100 / 3.0 + 0.5 * 700 - 225, within(1e-9));
    }

    @Test
    void quantile_and_cumulative_undo_each_other() {
        for (double p = 0; p <= 1; p += 0.05) {
            assertThat(TWO_PIECES.cumulative(TWO_PIECES.quantile(p))).isCloseTo(p, within(1e-12));
        }
        assertThat(TWO_PIECES.quantile(0.75)).isEqualTo(25);
        assertThat(TWO_PIECES.cumulative(-1)).isZero();
        assertThat(TWO_PIECES.cumulative(41)).isEqualTo(1);
        assertThatThrownBy(() -> TWO_PIECES.quantile(1.1)).hasMessageContaining("1.1");
    }

    /** A lognormal has mean exp(mu + sigma^2 / 2); the smearing mean of its quantiles comes near. */
    @Test
    void the_smearing_mean_of_lognormal_quantiles() {
        double[] levels = Spread.LEVELS;
        double[] values = new double[levels.length];
        NormalDistribution normal =
                NormalDistribution.of(9, 0.3);
        for (int i = 0; i < levels.length; i++) {
            values[i] = Math.exp(normal.inverseCumulativeProbability(levels[i]));
        }
        double mean = Math.exp(9 + 0.045);

        assertThat(new QuantileDistribution(levels, values).mean()).isCloseTo(mean, within(mean * 2e-3));
    }
}
