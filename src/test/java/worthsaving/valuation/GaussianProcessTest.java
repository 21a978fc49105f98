package worthsaving.valuation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import worthsaving.quantity.Seed;

class GaussianProcessTest {

    private static final int AGE = 0;
    private static final int MILES = 1;
    private static final int MAKE = FactSpace.NUMBERS.size();

    private static CarFacts car(String make, double age, double miles) {
        return new CarFacts(make, "m", 2019 - age, age, miles, "", Double.NaN, Double.NaN, Double.NaN, "", "", "", "", 0, 2019);
    }

    private static List<FactSpace.Point> points(FactSpace space, List<CarFacts> cars) {
        return cars.stream().map(space::point).toList();
    }

    /** (1 + sqrt(3) r) exp(-sqrt(3) r): Rasmussen and Williams 2006, equation 4.17. */
    @ParameterizedTest
    @CsvSource({"0, 1", "1, 0.4833577245", "4, 0.1397313501"})
    void covariance_is_that_of_matern_three_halves(double squared, double expected) {
        assertThat(Likeness.covariance(squared)).isCloseTo(expected, within(1e-9));
    }

    /** Two cars one scale apart; K^-1 y by Cramer's rule (ibid., equation 2.25). */
    @Test
    void predicts_as_two_equations_solved_by_hand() {
        List<CarFacts> cars = List.of(car("alpha", 4, 50_000), car("alpha", 8, 50_000));
        FactSpace space = FactSpace.over(cars);
        double[] weight = new double[space.facts()];
        weight[AGE] = 0.25;
        Likeness likeness = new Likeness(weight, 0.1);
        double c = Likeness.covariance(0.25 * 4);
        double determinant = 1.1 * 1.1 - c * c;
        double first = (1.1 * 0.3 + c * 0.2) / determinant;
        double second = (-1.1 * 0.2 - c * 0.3) / determinant;

        GaussianProcess process = GaussianProcess.fit(space, likeness, points(space, cars), new double[] {0.3, -0.2});

        assertThat(process.pull()).containsExactly(new double[] {first, second}, within(1e-12));
        assertThat(process.predict(car("alpha", 4, 90_000))).isCloseTo(first + c * second, within(1e-12));
    }

    @Test
    void a_word_never_seen_lies_apart_from_all_and_a_number_not_stated_in_the_middle() {
        FactSpace space = FactSpace.over(List.of(car("alpha", 4, 50_000), car("beta", 8, 90_000)));
        FactSpace.Point omega = space.point(car("omega", Double.NaN, 90_000));

        assertThat(space.apart(MAKE, omega, space.point(car("alpha", 4, 50_000)))).isEqualTo(1);
        assertThat(space.apart(MAKE, omega, omega)).isEqualTo(1);
        assertThat(omega.numbers()[AGE]).isZero();
        assertThat(omega.numbers()[MILES]).isCloseTo(1, within(1e-12));
    }

    @Test
    void the_weights_find_what_bears_on_the_price_and_predict_it() {
        SplittableRandom random = new SplittableRandom(5);
        List<CarFacts> cars = new ArrayList<>();
        double[] y = new double[300];
        for (int i = 0; i < y.length; i++) {
            String make = i % 2 == 0 ? "alpha" : "beta";
            CarFacts car = car(make, random.nextDouble(1, 15), random.nextDouble(10_000, 150_000));
            cars.add(car);
            y[i] = truth(car) + 0.05 * random.nextGaussian();
        }
        FactSpace space = FactSpace.over(cars);
        Likeness chosen = Likeness.choose(space, points(space, cars), y, Seed.DEFAULT);
        GaussianProcess process = GaussianProcess.fit(space, chosen, points(space, cars), y);

        assertThat(chosen.weight()[MILES]).isLessThan(0.1 * chosen.weight()[AGE]);
        assertThat(chosen.weight()[MAKE]).isGreaterThan(chosen.weight()[MILES]);
        for (CarFacts unseen : List.of(car("alpha", 3.3, 100_000), car("beta", 7.7, 20_000), car("beta", 12, 140_000))) {
            assertThat(process.predict(unseen)).isCloseTo(truth(unseen), within(0.06));
        }
    }

    /** Mileage says nothing here. */
    private static double truth(CarFacts car) {
        return Math.sin(car.age() / 3) + (car.make().equals("alpha") ? 0.3 : -0.3);
    }

    @Test
    void without_rows_it_says_nothing() {
        assertThat(GaussianProcess.NONE.fitted()).isFalse();
        assertThat(GaussianProcess.NONE.predict(car("alpha", 4, 50_000))).isZero();
    }
}
