package worthsaving.record;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import worthsaving.quantity.Seed;

/** Three cars reckoned by hand: each forecast 8, 10 or 12, what came was 9, 10 and 13. */
class TrackRecordTest {

    private static final Ensemble FORECAST = Ensemble.of(8, 10, 12);
    private static final List<Scored> RESULTS = List.of(
            new Scored("A", FORECAST, 9), new Scored("B", FORECAST, 10), new Scored("C", FORECAST, 13));

    private static QuantityRecord hours(List<Scored> results) {
        return QuantityRecord.of(Quantity.HOURS, results, Seed.DEFAULT);
    }

    @Test
    void bias_and_its_error() {
        QuantityRecord record = hours(RESULTS);

        assertThat(record.cars()).isEqualTo(3);
        assertThat(record.bias()).isCloseTo(2 / 3.0, within(1e-12));
        assertThat(record.biasError().orElseThrow()).as("squares 78/9, by 2 and by 3")
                .isCloseTo(Math.sqrt(78 / 54.0), within(1e-12));
        assertThat(hours(RESULTS.subList(0, 1)).biasError()).isEmpty();
    }

    /** CRPS as mean |x - y| less half the mean |x - x'|: Gneiting and Raftery (2007), equation 21. */
    @Test
    void scores_against_a_forecaster_who_knows_the_other_cars() {
        QuantityRecord record = hours(RESULTS);

        assertThat(record.crps()).as("7/9, 4/9 and 19/9").isCloseTo(10 / 9.0, within(1e-12));
        assertThat(record.naiveCrps().orElseThrow()).as("1, 0 and 3").isCloseTo(4 / 3.0, within(1e-12));
        assertThat(record.skill().orElseThrow()).isCloseTo(1 / 6.0, within(1e-12));
        assertThat(hours(RESULTS.subList(0, 2)).naiveCrps()).as("too few cars").isEmpty();
        assertThat(hours(RESULTS.subList(0, 2)).skill()).isEmpty();
    }

    @Test
    void intervals_and_quantiles() {
        QuantityRecord record = hours(RESULTS);

        assertThat(record.interval()).as("4, 4 and 4 + 10 for one beyond").isCloseTo(22 / 3.0, within(1e-9));
        assertThat(record.pinball()).hasSize(3);
        assertThat(record.pinball()[0]).isCloseTo(0.8 / 3, within(1e-12));
        assertThat(record.pinball()[1]).isCloseTo(2 / 3.0, within(1e-12));
        assertThat(record.pinball()[2]).isCloseTo(1.4 / 3, within(1e-12));
    }

    /** Clopper and Pearson (1934): 2 of 3 at 95 %, computed with scipy.stats.beta: 0.09430 to 0.99160. */
    @Test
    void coverage_has_the_exact_interval() {
        Coverage coverage = hours(RESULTS).coverage();

        assertThat(coverage.held()).isEqualTo(2);
        assertThat(coverage.share()).isCloseTo(2 / 3.0, within(1e-12));
        assertThat(coverage.low()).isCloseTo(0.09430, within(5e-6));
        assertThat(coverage.high()).isCloseTo(0.99160, within(5e-6));
        assertThat(coverage.off()).isFalse();
        assertThat(Coverage.of(0, 20, 0.8).off()).as("none of twenty").isTrue();
        assertThat(Coverage.of(20, 20, 0.8).off()).as("all of twenty").isTrue();
    }

    @Test
    void each_result_lies_in_its_stretch_of_the_forecast() {
        double[] places = hours(RESULTS).pit().values();

        assertThat(places[0]).as("between 8 and 10").isBetween(1 / 6.0, 0.5);
        assertThat(places[1]).as("at 10, one of three").isBetween(1 / 3.0, 2 / 3.0);
        assertThat(places[2]).as("beyond 12").isBetween(5 / 6.0, 1.0);
        assertThat(Pit.place(FORECAST, 9, 0)).isCloseTo(1 / 6.0, within(1e-12));
        assertThat(Pit.place(FORECAST, 9, 1)).isCloseTo(0.5, within(1e-12));
        assertThat(Pit.place(FORECAST, 10, 0.5)).isCloseTo(0.5, within(1e-12));
        assertThat(Pit.place(FORECAST, 7, 0)).isZero();
        assertThat(Pit.place(FORECAST, 7, 1)).isCloseTo(1 / 6.0, within(1e-12));
        assertThat(Pit.place(FORECAST, 13, 1)).isCloseTo(1, within(1e-12));
    }

    /** D = max(i/n - u, u - (i-1)/n); for two values P(D >= 0.75) = 2 (1 - 0.75)^2. */
    @Test
    void distance_from_the_uniform() {
        Pit pit = Pit.ofValues(0.1, 0.25);

        assertThat(pit.distance()).isCloseTo(0.75, within(1e-12));
        assertThat(pit.pValue().orElseThrow()).isCloseTo(0.125, within(1e-9));
        assertThat(pit.histogram(4)).containsExactly(1, 1, 0, 0);
        assertThat(Pit.ofValues(1.0, 0.0).histogram(4)).containsExactly(1, 0, 0, 1);
        assertThat(Pit.ofValues(0.4).pValue()).as("one value proves nothing").isEmpty();
        assertThat(pit).hasToString("Pit[0.1, 0.25]");
    }

    private static FinishedCar car(String id, Map<Quantity, Double> came, List<Chance> items) {
        return new FinishedCar(id, Map.of(Quantity.HOURS, FORECAST, Quantity.DAYS, FORECAST), came, items,
                OptionalDouble.empty(), OptionalDouble.empty(), OptionalDouble.empty());
    }

    @Test
    void only_what_was_forecast_and_came_is_compared() {
        TrackRecord record = TrackRecord.of(List.of(
                car("A", Map.of(Quantity.HOURS, 9.0, Quantity.VALUE, 900.0), List.of(new Chance("X", 0.8, true))),
                car("B", Map.of(Quantity.HOURS, 10.0), List.of(new Chance("X", 0.4, false)))), Seed.DEFAULT);

        assertThat(record.quantities()).extracting(QuantityRecord::quantity).containsExactly(Quantity.HOURS);
        assertThat(record.quantities().get(0).cars()).isEqualTo(2);
        assertThat(record.failedItems().orElseThrow().score()).as("0.2 and 0.4 squared").isCloseTo(0.1, within(1e-12));
        assertThat(TrackRecord.of(List.of(car("A", Map.of(), List.of())), Seed.DEFAULT).failedItems()).isEmpty();
    }

    /** Clopper-Pearson at 95 %, scipy.stats.beta: 1 of 1 is 2.5 to 100 %, 8 of 10 44.4 to 97.5 %, 800 of 1000 77.4 to 82.4 %. */
    @Test
    void says_first_what_so_few_cars_can_prove() {
        assertThat(new TrackRecord(0, List.of(), java.util.Optional.empty()).caution()).contains("nothing to compare");
        assertThat(new TrackRecord(1, List.of(), java.util.Optional.empty()).caution())
                .startsWith("One finished car proves little").contains("1 of 1", "from 3 to 100 %");
        assertThat(new TrackRecord(10, List.of(), java.util.Optional.empty()).caution())
                .startsWith("10 finished cars prove little").contains("8 of 10", "from 44 to 97 %");
        assertThat(new TrackRecord(1_000, List.of(), java.util.Optional.empty()).caution())
                .startsWith("1000 finished cars: ").contains("from 77 to 82 %");
    }

    @Test
    void quantities_have_a_name_and_a_unit() {
        assertThat(Quantity.HOURS.label() + " " + Quantity.HOURS.unit()).isEqualTo("hours h");
        assertThat(Quantity.VALUE.label() + " " + Quantity.VALUE.unit()).isEqualTo("value money");
    }
}
