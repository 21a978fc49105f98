package worthsaving.record;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Scores against published formulas and values computed elsewhere. */
class OutsideScoresTest {

    private static final double TIGHT = 1e-9;

    /** CRPS-NORM: Gneiting and Raftery (2007), JASA 102:359, equation 21; values computed with scipy. */
    @ParameterizedTest
    @CsvSource({
        "0, 1, 0, 0.23369497725510913",
        "0, 1, 1, 0.6024413576276163",
        "0, 1, 2, 1.4527918216859033",
        "5000, 800, 6200, 795.5392031819623"
    })
    void crps_of_a_normal(double mean, double sd, double y, double expected) {
        assertThat(Crps.normal(mean, sd, y)).isCloseTo(expected, within(TIGHT));
    }

    /** CRPS-ENS: Gneiting and Raftery (2007), equation 20; the fair form of Ferro (2014), QJRMS 140:1917. */
    @Test
    void crps_of_an_ensemble() {
        assertThat(Crps.of(Ensemble.of(1, 2, 4), 3)).isCloseTo(2 / 3.0, within(1e-12));
        assertThat(Crps.fair(Ensemble.of(4, 1, 2), 3)).isCloseTo(1 / 3.0, within(1e-12));
    }

    /** WINKLER: Winkler (1972), JASA 67:187; Gneiting and Raftery (2007), section 6.2. */
    @ParameterizedTest
    @CsvSource({"6000, 4000", "3500, 14000", "8300, 10000"})
    void score_of_an_interval(double y, double expected) {
        assertThat(IntervalScores.winkler(4000, 8000, 0.1, y)).isCloseTo(expected, within(TIGHT));
    }

    /** PINBALL: Koenker and Bassett (1978), Econometrica 46:33. */
    @ParameterizedTest
    @CsvSource({"6000, .9, 900", "6000, .5, 500", "6000, .1, 100", "4000, .9, 100", "4000, .5, 500", "4000, .1, 900"})
    void pinball_loss(double y, double tau, double expected) {
        assertThat(IntervalScores.pinball(5000, tau, y)).isCloseTo(expected, within(TIGHT));
    }

    /** PINBALL, identity: the interval score is 2/alpha times the two pinball losses of its ends. */
    @ParameterizedTest
    @CsvSource({"6000", "3500", "8300", "4000", "8000"})
    void an_interval_is_two_quantiles(double y) {
        double alpha = 0.1;
        double losses = IntervalScores.pinball(4000, alpha / 2, y) + IntervalScores.pinball(8000, 1 - alpha / 2, y);
        assertThat(IntervalScores.winkler(4000, 8000, alpha, y)).isCloseTo(2 / alpha * losses, within(TIGHT));
    }

    /** BRIER: Brier (1950), MWR 78:1; decomposition of Murphy (1973), J. Appl. Met. 12:595; constructed case. */
    @Test
    void brier_score_and_what_it_is_made_of() {
        double[] f = {.1, .1, .1, .3, .3, .5, .5, .7, .7, .9};
        int[] o = {0, 0, 1, 0, 1, 0, 1, 1, 0, 1};
        List<Chance> chances = new ArrayList<>();
        for (int i = 0; i < f.length; i++) {
            chances.add(new Chance("x", f[i], o[i] == 1));
        }
        BrierScore brier = BrierScore.exact(chances);
        assertThat(brier.score()).isCloseTo(0.25, within(TIGHT));
        assertThat(brier.reliability()).isCloseTo(0.03333333333333333, within(TIGHT));
        assertThat(brier.resolution()).isCloseTo(0.03333333333333333, within(TIGHT));
        assertThat(brier.uncertainty()).isCloseTo(0.25, within(TIGHT));
        assertThat(brier.skill()).isCloseTo(0, within(TIGHT));
        assertThat(brier.logLoss()).isCloseTo(0.7126256497616752, within(TIGHT));
        assertThat(brier.bins()).extracting(BrierScore.Bin::count).containsExactly(3, 2, 2, 2, 1);
        assertThat(brier.reliability() - brier.resolution() + brier.uncertainty())
                .isCloseTo(brier.score(), within(TIGHT));
    }

    /** COVER-CI: Clopper and Pearson (1934), Biometrika 26:404; values computed with scipy. */
    @ParameterizedTest
    @CsvSource({
        "17, 20, 0.621073173454686, 0.9679290628145363",
        "85, 100, 0.7646924998510451, 0.9135456143583515",
        "0, 10, 0.0, 0.3084971078187608"
    })
    void exact_interval_of_a_share(int held, int cars, double low, double high) {
        Coverage coverage = Coverage.of(held, cars, 0.8);
        assertThat(coverage.low()).isCloseTo(low, within(TIGHT));
        assertThat(coverage.high()).isCloseTo(high, within(TIGHT));
    }

    /** COVER-CI: Wilson (1927), JASA 22:209; values computed with scipy. */
    @ParameterizedTest
    @CsvSource({"17, 20, 0.6395811352592431, 0.9476312541037835", "85, 100, 0.7671644040916763, 0.9069401471634337"})
    void score_interval_of_a_share(int held, int cars, double low, double high) {
        assertThat(Coverage.wilson(held, cars)[0]).isCloseTo(low, within(TIGHT));
        assertThat(Coverage.wilson(held, cars)[1]).isCloseTo(high, within(TIGHT));
    }

    /** PIT-KS: exact Kolmogorov-Smirnov test against the uniform distribution; values computed with scipy 1.10. */
    @Test
    void distance_from_uniform() {
        Pit pit = Pit.ofValues(.05, .12, .22, .41, .55, .62, .71, .88);
        assertThat(pit.distance()).isCloseTo(0.165, within(1e-6));
        assertThat(pit.pValue().orElseThrow()).isCloseTo(0.9571692191057402, within(1e-6));
    }
}
