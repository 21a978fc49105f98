package worthsaving.quantity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Closed forms of the distributions that the tool knows by name. */
class KnownDistributionsTest {

    private static final Offset<Double> EXACT = within(1e-9);

    /** phi(z_a)/a: Rockafellar and Uryasev (2000), Journal of Risk 2:21; run independently. */
    @ParameterizedTest
    @CsvSource({".1, 1.7549833193248683", ".05, 2.0627128075074253", ".025, 2.337802792201413",
            ".01, 2.665214220345807"})
    void the_worst_of_a_unit_normal(double share, double multiplier) {
        assertThat(new Normal(0, 1).meanOfWorst(share)).isCloseTo(-multiplier, EXACT);
    }

    /** The same source; a profit of 1,000 with a standard deviation of 800. */
    @Test
    void a_normal_profit() {
        Normal profit = new Normal(1_000, 800);
        assertThat(new Normal(0, 1).quantile(.05)).isCloseTo(-1.6448536269514729, EXACT);
        assertThat(profit.quantile(.05)).isCloseTo(1_000 - 800 * 1.6448536269514729, EXACT);
        assertThat(profit.meanOfWorst(.05)).isCloseTo(-650.1702460059405, EXACT);
        assertThat(profit.cumulative(0)).isCloseTo(0.10564977366685535, EXACT);
        assertThat(profit.variance()).isEqualTo(640_000);
    }

    /** From 10 % and 90 % quantiles of 400 and 1,600; closed form, run independently. */
    @Test
    void a_lognormal_between_two_quantiles() {
        LogNormal value = LogNormal.between(400, 1_600);
        assertThat(value.mu()).isCloseTo(6.684611727667927, EXACT);
        assertThat(value.sigma()).isCloseTo(0.5408656188293054, EXACT);
        assertThat(value.quantile(.5)).isCloseTo(800, EXACT);
        assertThat(value.mean()).isCloseTo(926.0049095145872, EXACT);
        assertThat(value.cumulative(1_600)).isCloseTo(.9, EXACT);
        assertThat(value.cumulative(-1)).isZero();
    }

    /**
     * Keefer and Bodily (1983), Management Science 29:595: means of lognormals told in three points, weights from
     * memory, figures run independently; Swanson's rule has 0.3, 0.4, 0.3 at 10, 50 and 90 %.
     */
    @ParameterizedTest
    @CsvSource({".5, 1.1331484530668263, 1.1323454319867348, 1.127450867689224",
            "1, 1.6487212707001282, 1.6240590975023736, 1.56394921633935"})
    void a_lognormal_told_in_three_points(double sigma, double mean, double pearsonTukey, double swanson) {
        LogNormal value = new LogNormal(0, sigma);
        assertThat(value.mean()).isCloseTo(mean, EXACT);
        assertThat(ThreePoint.extendedPearsonTukey(value::quantile).mean()).isCloseTo(pearsonTukey, EXACT);
        assertThat(new ThreePoint(value.quantile(.1), value.quantile(.5), value.quantile(.9), .3).mean())
                .isCloseTo(swanson, EXACT);
    }

    /** The closed forms against the integral of the quantile function that stands in for a missing one. */
    @ParameterizedTest
    @ValueSource(doubles = {.01, .05, .3, .9, 1})
    void closed_forms_agree_with_the_integral(double share) {
        for (Distribution known : new Distribution[] {new Range(100, 200, 600).asPert(), Range.exactly(7).asPert(),
            new LogNormal(5, .4), new Normal(300, 80), new LogNormal(5, .4).scaled(3)}) {
            assertThat(known.meanOfWorst(share)).isCloseTo(integral(known).meanOfWorst(share), within(.05));
        }
        assertThat(new Range(100, 200, 600).asPert().meanOfWorst(1)).isCloseTo(250, EXACT);
    }

    @Test
    void what_is_no_distribution_is_refused() {
        assertThatThrownBy(() -> new Normal(0, 0)).hasMessageContaining("standard deviation");
        assertThatThrownBy(() -> new LogNormal(0, -1)).hasMessageContaining("sigma");
        assertThatThrownBy(() -> LogNormal.between(500, 400)).hasMessageContaining("higher one");
        assertThatThrownBy(() -> new ThreePoint(1, 2, 3, .5)).hasMessageContaining("one half");
        assertThatThrownBy(() -> new Normal(0, 1).meanOfWorst(0)).hasMessageContaining("above 0");
    }

    private static Distribution integral(Distribution of) {
        return new Distribution() {
            @Override
            public double mean() {
                return of.mean();
            }

            @Override
            public double variance() {
                return of.variance();
            }

            @Override
            public double quantile(double p) {
                return of.quantile(p);
            }

            @Override
            public double cumulative(double x) {
                return of.cumulative(x);
            }
        };
    }
}
