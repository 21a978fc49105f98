package worthsaving.record;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import worthsaving.quantity.Seed;
import worthsaving.record.Simulated.Forecaster;

/** Simulated casebooks: right forecasts look right, wrong ones are found out. */
class CalibrationTest {

    private static final int BOOKS = 400;
    private static final int CARS = 100;

    private static QuantityRecord value(Forecaster by, int book) {
        return TrackRecord.of(Simulated.cars(CARS, by, Seed.DEFAULT.derive("book " + book)), Seed.DEFAULT)
                .quantities().get(0);
    }

    /** Share of simulated casebooks whose PIT is called not uniform at the 5 % level. */
    private static double rejected(Forecaster by) {
        int rejected = 0;
        for (int book = 0; book < BOOKS; book++) {
            if (value(by, book).pit().pValue().orElseThrow() < 0.05) {
                rejected++;
            }
        }
        return (double) rejected / BOOKS;
    }

    /** An exact test at 5 % rejects 5 % of right casebooks; within three standard errors of 400 books. */
    @Test
    void right_forecasts_give_a_uniform_pit() {
        double threeErrors = 3 * Math.sqrt(0.05 * 0.95 / BOOKS);
        assertThat(rejected(Forecaster.RIGHT)).isCloseTo(0.05, within(threeErrors));
        assertThat(value(Forecaster.RIGHT, 1).pit().pValue().orElseThrow()).isGreaterThan(0.05);
    }

    @ParameterizedTest
    @CsvSource({"1.15, 1, 0.9", "0.85, 1, 0.9", "1, 0.5, 0.9", "1, 2, 0.9"})
    void wrong_forecasts_are_found_out(double median, double spread, double atLeast) {
        assertThat(rejected(new Forecaster(median, spread, 1))).isGreaterThan(atLeast);
    }

    /** Forecasts that are too sure heap results at the ends, too unsure ones in the middle. */
    @Test
    void the_picture_says_what_is_wrong() {
        int[] sure = value(new Forecaster(1, 0.5, 1), 7).pit().histogram(4);
        int[] unsure = value(new Forecaster(1, 2, 1), 7).pit().histogram(4);
        int[] high = value(new Forecaster(1.3, 1, 1), 7).pit().histogram(4);
        assertThat(sure[0] + sure[3]).isGreaterThan(sure[1] + sure[2]);
        assertThat(unsure[0] + unsure[3]).isLessThan(unsure[1] + unsure[2]);
        assertThat(high[0]).isGreaterThan(high[3]);
    }

    /** The exact interval of coverage holds the nominal share in 95 % of right casebooks or more. */
    @Test
    void coverage_holds_when_forecasts_are_right_and_fails_when_too_sure() {
        int wronglyOff = 0;
        int rightlyOff = 0;
        for (int book = 0; book < BOOKS; book++) {
            wronglyOff += value(Forecaster.RIGHT, book).coverage().off() ? 1 : 0;
            rightlyOff += value(new Forecaster(1, 0.5, 1), book).coverage().off() ? 1 : 0;
        }
        assertThat((double) wronglyOff / BOOKS).isLessThan(0.05 + 3 * Math.sqrt(0.05 * 0.95 / BOOKS));
        assertThat((double) rightlyOff / BOOKS).isGreaterThan(0.9);
    }

    @Test
    void right_forecasts_beat_the_naive_one_and_wrong_ones_lose_skill() {
        double right = value(Forecaster.RIGHT, 3).skill().orElseThrow();
        double wrong = value(new Forecaster(1.5, 1, 1), 3).skill().orElseThrow();
        assertThat(right).isPositive().isGreaterThan(wrong);
    }

    /** Probabilities that are right are reliable within what chance allows; odds doubled are not. */
    @Test
    void probabilities_of_failed_items_are_judged_by_their_reliability() {
        BrierScore right = brier(Forecaster.RIGHT);
        BrierScore wrong = brier(new Forecaster(1, 1, 3));
        assertThat(right.reliability()).isLessThan(0.002);
        assertThat(wrong.reliability()).isGreaterThan(10 * right.reliability());
        assertThat(right.skill()).isGreaterThan(wrong.skill());
        assertThat(right.bins()).hasSize(10).allSatisfy(b -> assertThat(b.count()).isPositive());
    }

    private static BrierScore brier(Forecaster by) {
        return TrackRecord.of(Simulated.cars(2_000, by, Seed.DEFAULT.derive("items")), Seed.DEFAULT)
                .failedItems().orElseThrow();
    }

    @Test
    void the_same_seed_gives_the_same_record() {
        assertThat(value(Forecaster.RIGHT, 5).pit().values()).isEqualTo(value(Forecaster.RIGHT, 5).pit().values());
    }

    @Test
    void few_cars_are_said_to_prove_little() {
        assertThat(TrackRecord.of(List.of(), Seed.DEFAULT).caution()).contains("No car is finished");
        assertThat(TrackRecord.of(Simulated.cars(5, Forecaster.RIGHT, Seed.DEFAULT), Seed.DEFAULT).caution())
                .isEqualTo("5 finished cars prove little: even if 4 of 5 fell inside their 80 % interval, the true share "
                        + "could be anything from 28 to 99 %.");
        assertThat(TrackRecord.of(Simulated.cars(6, Forecaster.RIGHT, Seed.DEFAULT), Seed.DEFAULT).caution())
                .as("0.359 to 0.996: not all of them").endsWith("anything from 36 to 99 %.");
        assertThat(TrackRecord.of(Simulated.cars(2_000, Forecaster.RIGHT, Seed.DEFAULT), Seed.DEFAULT).caution())
                .doesNotContain("little");
    }
}
