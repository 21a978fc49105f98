package worthsaving.desktop.car;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import worthsaving.deal.Outcome;

class HistogramTest {

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5})
    void shares_add_up_and_loss_lies_left_of_zero(long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        double shift = random.nextDouble(-4_000, 4_000);
        double[] values = random.doubles(3_000).map(u -> shift + 5_000 * Math.tan(1.4 * (u - 0.5))).toArray();
        Outcome outcome = Outcome.equallyLikely(values);
        Histogram histogram = Histogram.of(outcome, 36);
        assertThat(Arrays.stream(histogram.shares()).sum()).isCloseTo(1, within(1e-9));
        long left = Math.round(-histogram.low() / histogram.width());
        assertThat(-histogram.low() / histogram.width()).isCloseTo(left, within(1e-9));
        double loss = Arrays.stream(histogram.shares()).limit(left).sum();
        assertThat(loss).isCloseTo(outcome.chanceOfLoss(), within(1e-9));
        assertThat(histogram.mean()).isEqualTo(outcome.mean());
        assertThat(histogram.shares().length).isBetween(15, 75);
    }

    @Test
    void a_certain_outcome_is_one_bar() {
        Histogram histogram = Histogram.of(Outcome.equallyLikely(0), 36);
        assertThat(histogram.tallest()).isEqualTo(1);
        assertThat(histogram.high()).isGreaterThan(histogram.low());
    }

    @ParameterizedTest
    @CsvSource({"0.9,1", "1,1", "1.1,2", "3,5", "5,5", "7,10", "130,200", "0,1", "0.03,0.05"})
    void steps_are_round(double atLeast, double step) {
        assertThat(Histogram.round(atLeast)).isCloseTo(step, within(1e-12));
    }
}
