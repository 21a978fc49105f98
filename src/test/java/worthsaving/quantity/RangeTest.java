package worthsaving.quantity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class RangeTest {

    /**
     * Source: Malcolm et al. (1959) and Vose's exact beta form; quantiles computed with scipy.stats.beta.
     */
    @ParameterizedTest
    @CsvSource({
        "100, 200, 600, 250, 7500, 129.4886938059086, 238.33612969625943, 410.63836200809516",
        "500, 900, 2500, 1100, 120000, 617.9547752236344, 1053.3445187850377, 1742.5534480323806",
        "1, 2, 9, 3, 1.7142857142857142, 1.2915781443631107, 2.7689591593818186, 5.502756884279825"
    })
    void has_the_published_pert_moments(
            double low, double mode, double high, double mean, double variance, double q05, double q50, double q95) {
        Distribution pert = new Range(low, mode, high).asPert();

        assertThat(pert.mean()).isCloseTo(mean, within(mean * 1e-9));
        assertThat(pert.variance()).isCloseTo(variance, within(variance * 1e-9));
        assertThat(pert.quantile(0.05)).isCloseTo(q05, within(q05 * 1e-9));
        assertThat(pert.quantile(0.5)).isCloseTo(q50, within(q50 * 1e-9));
        assertThat(pert.quantile(0.95)).isCloseTo(q95, within(q95 * 1e-9));
        assertThat(pert.cumulative(q95)).isCloseTo(0.95, within(1e-9));
    }

    @Test
    void a_range_without_width_is_a_point() {
        Distribution point = Range.exactly(7).asPert();

        assertThat(point.quantile(0.3)).isEqualTo(7);
        assertThat(point.variance()).isZero();
        assertThat(point.cumulative(6.999)).isZero();
        assertThat(point.cumulative(7)).isEqualTo(1);
    }

    @Test
    void refuses_a_mode_outside_the_ends() {
        assertThatThrownBy(() -> new Range(3, 2, 5)).hasMessageContaining("low <= mode <= high");
    }

    @Test
    void scaling_moves_every_quantile() {
        Distribution doubled = new Range(100, 200, 600).asPert().scaled(2);

        assertThat(doubled.mean()).isEqualTo(500);
        assertThat(doubled.quantile(0.05)).isCloseTo(2 * 129.4886938059086, within(1e-6));
        assertThat(doubled.cumulative(2 * 238.33612969625943)).isCloseTo(0.5, within(1e-9));
    }
}
