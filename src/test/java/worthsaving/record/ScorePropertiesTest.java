package worthsaving.record;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import java.util.List;
import java.util.SplittableRandom;
import org.apache.commons.statistics.distribution.NormalDistribution;
import org.junit.jupiter.api.Test;
import worthsaving.quantity.Seed;

class ScorePropertiesTest {

    private final SplittableRandom random = Seed.DEFAULT.derive("scores").generator();

    /** The sum over ranks against the double sum it stands for, ties included. */
    @Test
    void ensemble_score_equals_the_sum_over_all_pairs() {
        for (int run = 0; run < 200; run++) {
            double[] x = random.ints(1 + random.nextInt(12), 0, 9).asDoubleStream().toArray();
            double y = random.nextInt(11) - 1;
            double near = 0;
            double pairs = 0;
            for (double a : x) {
                near += Math.abs(a - y) / x.length;
                for (double b : x) {
                    pairs += Math.abs(a - b);
                }
            }
            assertThat(Crps.of(Ensemble.of(x), y))
                    .isCloseTo(near - pairs / 2 / x.length / x.length, within(1e-12));
        }
    }

    /** What a hundred quantiles lose against the whole distribution: a thousandth, even five deviations out. */
    @Test
    void quantiles_of_a_normal_score_like_the_normal() {
        NormalDistribution normal = NormalDistribution.of(5000, 800);
        Ensemble ensemble = Ensemble.ofQuantiles(normal::inverseCumulativeProbability);
        for (double y : new double[] {3000, 4800, 5000, 6200, 9000}) {
            assertThat(Crps.of(ensemble, y)).isCloseTo(Crps.normal(5000, 800, y), withinPercentage(0.1));
        }
    }

    /** Proper: over results of the true distribution no other forecast scores better. */
    @Test
    void the_true_forecast_scores_best() {
        double[] y = random.doubles(20_000).map(NormalDistribution.of(0, 1)::inverseCumulativeProbability).toArray();
        double truth = mean(y, 0, 1);
        assertThat(mean(y, 0.3, 1)).isGreaterThan(truth);
        assertThat(mean(y, 0, 1.5)).isGreaterThan(truth);
        assertThat(mean(y, 0, 0.6)).isGreaterThan(truth);
    }

    private static double mean(double[] y, double mean, double sd) {
        double sum = 0;
        for (double v : y) {
            sum += Crps.normal(mean, sd, v) / y.length;
        }
        return sum;
    }

    /** A point mass spreads its results evenly over the stretch it covers. */
    @Test
    void a_point_mass_is_spread() {
        Ensemble half = Ensemble.of(0, 0, 1, 2);
        assertThat(Pit.place(half, 0, 0.5)).isEqualTo(0.25);
        assertThat(Pit.place(half, -1, 0.999)).isZero();
        assertThat(Pit.place(half, 1.5, 0)).isEqualTo(0.625);
        assertThat(Pit.place(half, 5, 1)).isEqualTo(1);
    }

    @Test
    void quantiles_run_through_the_values_and_stay_within() {
        Ensemble e = Ensemble.of(30, 10, 20);
        assertThat(e.quantile(0.5)).isEqualTo(20);
        assertThat(e.quantile(0)).isEqualTo(10);
        assertThat(e.quantile(1)).isEqualTo(30);
        assertThat(e.quantile(1 / 3.0)).isCloseTo(15, within(1e-9));
    }

    @Test
    void nonsense_is_refused() {
        assertThatThrownBy(Ensemble::of).hasMessageContaining("at least one");
        assertThatThrownBy(() -> Ensemble.of(Double.NaN)).hasMessageContaining("finite");
        assertThatThrownBy(() -> Crps.normal(0, 0, 1)).hasMessageContaining("above 0");
        assertThatThrownBy(() -> IntervalScores.winkler(2, 1, 0.1, 0)).hasMessageContaining("low <= high");
        assertThatThrownBy(() -> BrierScore.exact(List.of())).hasMessageContaining("at least one");
        assertThatThrownBy(() -> new Chance("x", 1.1, true)).hasMessageContaining("0 to 1");
    }
}
