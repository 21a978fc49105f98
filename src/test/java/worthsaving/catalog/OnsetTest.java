package worthsaving.catalog;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import worthsaving.quantity.Distance;
import worthsaving.quantity.Probability;

class OnsetTest {

    /** Weibull distribution function, computed with scipy.stats.weibull_min.cdf. */
    @ParameterizedTest
    @CsvSource({
        "1, 10, 10, 0.6321205588285577",
        "2, 10, 10, 0.6321205588285577",
        "2, 20, 10, 0.22119921692859515",
        "3.5, 25, 8, 0.018365637920557357",
        "0.7, 40, 15, 0.39546405949226204"
    })
    void follows_the_weibull_law(double shape, double scale, double wear, double expected) {
        Onset onset = new Onset(shape, scale, 0, Probability.NEVER);

        assertThat(onset.prior(wear, Distance.ofMiles(0)).value()).isCloseTo(expected, within(1e-12));
    }

    @Test
    void mixes_age_and_miles_by_the_share() {
        Onset onset = new Onset(1, 10, 0.25, Probability.NEVER);

        // 0.75 * 4 + 0.25 * 96,000 / 12,000 = 5 years of wear
        assertThat(onset.prior(4, Distance.ofMiles(96_000)).value()).isCloseTo(1 - Math.exp(-0.5), within(1e-12));
        assertThat(onset.prior(4, Distance.ofKilometres(96_000 * 1.609344)).value())
                .isCloseTo(1 - Math.exp(-0.5), within(1e-12));
    }

    @Test
    void an_event_does_not_depend_on_wear() {
        Onset theft = new Onset(1, Double.POSITIVE_INFINITY, 0, Probability.of(0.012));

        assertThat(theft.prior(0, Distance.ofMiles(0)).value()).isCloseTo(0.012, within(1e-15));
        assertThat(theft.prior(30, Distance.ofMiles(300_000)).value()).isCloseTo(0.012, within(1e-15));
    }

    /** Half of those sound now are sound then: the two survivals, by the law itself. */
    @ParameterizedTest
    @CsvSource({"1, 10, 0.5, 4, 96000, 12000", "2.5, 12, 0.6, 8, 110000, 6000", "0.8, 6, 0, 1, 0, 20000",
        "3.5, 14, 1, 5, 60000, 15000"})
    void half_of_the_sound_ones_have_failed_after_the_time_it_tells(
            double shape, double scale, double share, double age, double miles, double perYear) {
        Onset onset = new Onset(shape, scale, share, Probability.NEVER);

        double years = onset.yearsUntilHalf(age, Distance.ofMiles(miles), perYear).orElseThrow();

        double now = 1 - onset.prior(age, Distance.ofMiles(miles)).value();
        double then = 1 - onset.prior(age + years, Distance.ofMiles(miles + years * perYear)).value();
        assertThat(then / now).isCloseTo(0.5, within(1e-12));
    }

    @Test
    void of_wear_beyond_its_data_the_law_tells_no_time() {
        Onset slow = new Onset(2, 40, 0.5, Probability.NEVER);
        assertThat(slow.yearsUntilHalf(10, Distance.ofMiles(120_000), 12_000)).isEmpty();
        Onset parked = new Onset(2, 10, 1, Probability.NEVER);
        assertThat(parked.yearsUntilHalf(3, Distance.ofMiles(36_000), 0)).isEmpty();
    }

    @Test
    void refuses_shapes_and_scales_of_zero() {
        assertThatThrownBy(() -> new Onset(0, 10, 0, Probability.NEVER)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new Onset(1, 0, 0, Probability.NEVER)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new Onset(1, 1, 1.1, Probability.NEVER)).isInstanceOf(IllegalArgumentException.class);
    }

    /** Odds by definition: F/(1 - F) doubled; 0.2 has odds 1:4, so 1:2 is a third. */
    @Test
    void what_finished_cars_teach_multiplies_the_odds() {
        Onset event = new Onset(1, Double.POSITIVE_INFINITY, 0, Probability.of(0.2));
        Distance none = Distance.ofMiles(0);
        assertThat(event.withOdds(2).prior(5, none).value()).isCloseTo(1 / 3.0, within(1e-15));
        assertThat(event.withOdds(2).withOdds(0.5)).isEqualTo(event);
        assertThat(new Onset(2, 10, 0, Probability.NEVER).withOdds(3).prior(0, none).value()).isZero();
        assertThatThrownBy(() -> event.withOdds(0)).isInstanceOf(IllegalArgumentException.class);
    }
}
