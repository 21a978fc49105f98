package worthsaving.deal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.SplittableRandom;
import java.util.function.DoubleUnaryOperator;
import org.apache.commons.statistics.distribution.LogNormalDistribution;
import org.apache.commons.statistics.distribution.NormalDistribution;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class OutcomeTest {

    private static final int MANY = 1 << 20;

    /** Rockafellar and Uryasev (2002): the atom at the limit counts by its part. */
    @ParameterizedTest
    @CsvSource({".05, -500", ".10, -500", ".15, -400", ".25, -280"})
    void mean_of_the_worst_with_atoms(double share, double expected) {
        Outcome ten = Outcome.equallyLikely(100, -500, 0, 300, -200, 400, 600, 1_200, 700, 900);
        assertThat(ten.meanOfWorst(share)).isCloseTo(expected, within(1e-9));
    }

    /** phi(z_a)/a, Rockafellar and Uryasev (2000); a million equally likely normal quantiles. */
    @ParameterizedTest
    @CsvSource({".1, 1.7549833193248683", ".05, 2.0627128075074253", ".025, 2.337802792201413",
            ".01, 2.665214220345807"})
    void mean_of_the_worst_of_a_normal(double share, double multiplier) {
        NormalDistribution unit = NormalDistribution.of(0, 1);
        Outcome normal = quantiles(unit::inverseCumulativeProbability);
        assertThat(normal.meanOfWorst(share)).isCloseTo(-multiplier, within(2e-5));
    }

    @Test
    void a_normal_profit() {
        NormalDistribution profit = NormalDistribution.of(1_000, 800);
        Outcome outcome = quantiles(profit::inverseCumulativeProbability);
        assertThat(outcome.meanOfWorst(.05)).isCloseTo(-650.1702460059405, within(0.02));
        assertThat(outcome.chanceOfLoss()).isCloseTo(0.10564977366685535, within(1e-6));
        assertThat(outcome.quantile(.05)).isCloseTo(1_000 - 800 * 1.6448536269514729, within(0.01));
        assertThat(outcome.standardDeviation()).isCloseTo(800, within(0.01));
    }

    /** Mean of the worst share a of a lognormal: exp(m + s^2/2) Phi(z_a - s)/a. */
    @ParameterizedTest
    @ValueSource(doubles = {.01, .05, .25, .8})
    void mean_of_the_worst_of_a_lognormal(double share) {
        double m = 8.5;
        double s = 0.4;
        NormalDistribution unit = NormalDistribution.of(0, 1);
        double expected = Math.exp(m + s * s / 2)
                * unit.cumulativeProbability(unit.inverseCumulativeProbability(share) - s) / share;
        Outcome outcome = quantiles(LogNormalDistribution.of(m, s)::inverseCumulativeProbability);
        assertThat(outcome.meanOfWorst(share) / expected).isCloseTo(1, within(1e-5));
    }

    /** Lognormal from its 10 % and 90 % points 400 and 1,600: median 800, mean 926.005; closed form. */
    @Test
    void a_lognormal_from_two_points() {
        Outcome outcome = quantiles(LogNormalDistribution.of(6.684611727667927, 0.5408656188293054)
                ::inverseCumulativeProbability);
        assertThat(outcome.quantile(.1)).isCloseTo(400, within(0.01));
        assertThat(outcome.quantile(.5)).isCloseTo(800, within(0.01));
        assertThat(outcome.quantile(.9)).isCloseTo(1_600, within(0.01));
        assertThat(outcome.mean()).isCloseTo(926.0049095145872, within(0.01));
    }

    @Test
    void weights_need_not_add_up_to_one() {
        Outcome outcome = Outcome.of(new double[] {10, -10}, new double[] {3, 1});
        assertThat(outcome.mean()).isEqualTo(5);
        assertThat(outcome.chanceOfLoss()).isEqualTo(.25);
        assertThat(outcome.quantile(.25)).isEqualTo(-10);
        assertThat(outcome.quantile(.26)).isEqualTo(10);
        assertThat(outcome.meanOfWorst(1)).isEqualTo(5);
    }

    @Test
    void a_profit_of_nothing_is_no_loss() {
        assertThat(Outcome.equallyLikely(0, 0, 1).chanceOfLoss()).isZero();
        assertThat(Outcome.equallyLikely(0, -0.0, -1e-9).chanceOfLoss()).isCloseTo(1 / 3.0, within(1e-12));
    }

    @Test
    void the_histogram_holds_everything() {
        Outcome outcome = Outcome.of(new double[] {0, 1, 2, 3, 4}, new double[] {.1, .2, .3, .2, .2});
        assertThat(outcome.histogram(4)).containsExactly(new double[] {.1, .2, .3, .4}, within(1e-12));
        assertThat(Outcome.equallyLikely(7, 7).histogram(3)).containsExactly(1, 0, 0);
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8})
    void sorting_agrees_with_the_library(long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        double[] values = random.doubles(3_000, -1e6, 1e6).toArray();
        for (int i = 0; i < 200; i++) {
            values[random.nextInt(3_000)] = values[random.nextInt(3_000)] * (1 + 1e-13);
        }
        double[] sorted = values.clone();
        Arrays.sort(sorted);
        Outcome outcome = Outcome.equallyLikely(values);
        for (int i = 0; i < sorted.length; i += 7) {
            assertThat(outcome.quantile((i + 0.5) / 3_000)).isEqualTo(sorted[i]);
        }
    }

    @Test
    void what_is_no_distribution_is_refused() {
        assertThatThrownBy(() -> Outcome.of(new double[0], new double[0])).hasMessageContaining("at least one");
        assertThatThrownBy(() -> Outcome.equallyLikely(1, Double.NaN)).hasMessageContaining("outcome 1");
        assertThatThrownBy(() -> Outcome.of(new double[] {1}, new double[] {-1})).hasMessageContaining("zero or more");
        assertThatThrownBy(() -> Outcome.of(new double[] {1}, new double[] {0})).hasMessageContaining("positive");
        assertThatThrownBy(() -> Outcome.equallyLikely(1).meanOfWorst(0)).hasMessageContaining("share");
    }

    private static Outcome quantiles(DoubleUnaryOperator quantile) {
        double[] values = new double[MANY];
        for (int k = 0; k < MANY; k++) {
            values[k] = quantile.applyAsDouble((k + 0.5) / MANY);
        }
        return Outcome.equallyLikely(values);
    }

    @Test
    void the_same_outcomes_and_weights_are_equal() {
        Outcome one = Outcome.of(new double[] {1, 2}, new double[] {1, 3});

        assertThat(one).isEqualTo(Outcome.of(new double[] {1, 2}, new double[] {2, 6}))
                .hasSameHashCodeAs(Outcome.of(new double[] {1, 2}, new double[] {2, 6}));
        assertThat(one).isNotEqualTo(Outcome.of(new double[] {1, 2}, new double[] {1, 1}))
                .isNotEqualTo(Outcome.of(new double[] {1, 3}, new double[] {1, 3}));
    }

    /** Halves of {-4: .2, 0: .5, 10: .3}: (.2 x -4 + .3 x 0) / .5 = -1.6 and (.2 x 0 + .3 x 10) / .5 = 6. */
    @Test
    void equally_likely_parts_keep_the_mean_and_the_worst() {
        Outcome whole = Outcome.of(new double[] {0, 10, -4}, new double[] {.5, .3, .2});
        Outcome parts = whole.inParts(2);

        assertThat(parts.least()).isEqualTo(-1.6, within(1e-12));
        assertThat(parts.greatest()).isEqualTo(6, within(1e-12));
        assertThat(parts.mean()).isEqualTo(whole.mean(), within(1e-12));
        assertThat(whole.inParts(20).meanOfWorst(.25)).isEqualTo(whole.meanOfWorst(.25), within(1e-12));
    }
}
