package worthsaving.valuation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import worthsaving.quantity.Distance;

class GuardTest {

    private static final Guard GUARD = new Guard(20, 250_000, 0.4, 0.3, 10);

    private static Encoder encoder() {
        TreeMap<String, Encoder.Level> makes = new TreeMap<>(Map.of("alpha", new Encoder.Level(500, 9, 10, -0.1)));
        TreeMap<String, Encoder.Level> models = new TreeMap<>(Map.of(
                "alpha|common", new Encoder.Level(100, 9, 10, -0.1), "alpha|rare", new Encoder.Level(4, 9, 10, -0.1)));
        return new Encoder(
                makes, models, List.of(Map.of(), Map.of(), Map.of(), Map.of(), Map.of()), Collections.emptySortedMap());
    }

    private static CarFacts car(String make, String model, double age, double miles) {
        return new CarFacts(make, model, 2019 - age, age, miles, "good", 4, 2, 100, "gas", "automatic", "sedan", "", 0, 2019);
    }

    /** By hand: makes and models add in variance; a model with 4 of 10 rows keeps 6/10 of the model's variance. */
    @ParameterizedTest
    @CsvSource({
        "alpha, common, 10, 100000, 0, 0",
        "alpha, never, 10, 100000, 0.3, 1",
        "omega, never, 10, 100000, 0.5, 1",
        "alpha, rare, 10, 100000, 0.2323790008, 1",
        "alpha, common, 25, 100000, 0.2, 1",
        "alpha, common, 10, 300000, 0.2, 1",
        "alpha, common, 25, 300000, 0.2828427125, 2"
    })
    void adds_the_measured_doubt_and_says_why(
            String make, String model, double age, double miles, double spread, int warnings) {
        CarFacts car = car(make, model, age, miles);

        assertThat(GUARD.spread(car, encoder())).isCloseTo(spread, within(1e-9));
        assertThat(GUARD.warnings(car, encoder(), Distance.Unit.MILES)).hasSize(warnings);
    }

    @Test
    void what_is_not_known_is_said_but_not_counted_as_far_out() {
        CarFacts car = car("alpha", "common", Double.NaN, Double.NaN);

        assertThat(GUARD.spread(car, encoder())).isZero();
        assertThat(GUARD.warnings(car, encoder(), Distance.Unit.MILES)).hasSize(2)
                .allSatisfy(w -> assertThat(w).contains("is not known"));
    }

    @Test
    void a_market_without_odometers_has_no_end_of_mileage() {
        Guard blind = new Guard(20, Double.NaN, 0.4, 0.3, 10);

        assertThat(blind.spread(car("alpha", "common", 10, 900_000), encoder())).isZero();
    }
}
