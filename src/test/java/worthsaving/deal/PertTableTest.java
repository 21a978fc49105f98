package worthsaving.deal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.stream.IntStream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import worthsaving.quantity.Range;

class PertTableTest {

    private static final int LEVELS = 4_096;

    /**
     * Moments and quantiles of PERT-betas: Malcolm and others (1959), mean and variance; quantiles run
     * independently with another library. The table is good to a few 1e-4 of the width.
     */
    @ParameterizedTest
    @CsvSource({
        "100, 200, 600, 250, 7500, 129.4886938059086, 238.33612969625943, 410.63836200809516",
        "500, 900, 2500, 1100, 120000, 617.9547752236344, 1053.3445187850377, 1742.5534480323806",
        "1, 2, 9, 3, 1.7142857142857142, 1.2915781443631107, 2.7689591593818186, 5.502756884279825"
    })
    void published_moments_and_quantiles(
            double low, double mode, double high, double mean, double variance, double q05, double q50, double q95) {
        Outcome drawn = Outcome.equallyLikely(draw(new Range(low, mode, high)));
        double width = high - low;
        assertThat(drawn.mean()).isCloseTo(mean, within(1e-9 * width));
        assertThat(drawn.standardDeviation()).isCloseTo(Math.sqrt(variance), within(2e-4 * width));
        assertThat(drawn.quantile(.05)).isCloseTo(q05, within(5e-4 * width));
        assertThat(drawn.quantile(.50)).isCloseTo(q50, within(5e-4 * width));
        assertThat(drawn.quantile(.95)).isCloseTo(q95, within(5e-4 * width));
    }

    @ParameterizedTest
    @ValueSource(doubles = {0, 0.003, 0.11, 0.25, 0.4921875, 0.5, 0.77, 0.999, 1})
    void close_to_the_incomplete_beta_everywhere(double mode) {
        double[] drawn = draw(new Range(0, mode, 1));
        for (int k = 0; k < LEVELS; k += 37) {
            double exact = new Range(0, mode, 1).asPert().quantile((k + 0.5) / LEVELS);
            assertThat(drawn[k]).as("level %d", k).isCloseTo(exact, within(2e-4));
        }
    }

    private static double[] draw(Range range) {
        char[] column = new char[LEVELS];
        for (int k = 0; k < LEVELS; k++) {
            column[k] = (char) k;
        }
        DrawnRange amount = new PertTable(LEVELS).draw(range, column);
        return IntStream.range(0, LEVELS).mapToDouble(amount::at).toArray();
    }
}
