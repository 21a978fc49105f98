package worthsaving.valuation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.io.Reader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;
import worthsaving.market.NumberTable;

/**
 * The regression of the price model, with penalty 0, against published fits.
 * Source of the cars: Kuiper (2008), J. Statistics Education 16(3); expected figures computed with R 4.2.2 lm.
 */
class LinearRegressionTest {

    static final List<String> K2 = List.of("Mileage", "Cylinder", "Doors", "Cruise", "Sound", "Leather");
    static final List<String> K4 = List.of(
            "Mileage", "Cylinder", "Cruise", "Sound", "Leather", "Buick", "Cadillac", "Chevy", "Pontiac", "Saab",
            "convertible", "coupe", "hatchback", "sedan");

    static NumberTable cars() throws IOException {
        try (Reader reader = Files.newBufferedReader(Path.of("datasets/us_cars_2005.csv"))) {
            return NumberTable.read(reader, "us_cars_2005.csv");
        }
    }

    static double[][] rows(NumberTable table, List<String> names) {
        double[][] x = new double[table.size()][names.size()];
        for (int j = 0; j < names.size(); j++) {
            double[] column = table.column(names.get(j));
            for (int i = 0; i < x.length; i++) {
                x[i][j] = column[i];
            }
        }
        return x;
    }

    static double[] logPrice(NumberTable cars) {
        return Arrays.stream(cars.column("Price")).map(Math::log).toArray();
    }

    private static Offset<Double> relative(double expected, double share) {
        return within(Math.abs(expected) * share);
    }

    /** REG-K1. */
    @Test
    void price_on_mileage() throws IOException {
        LinearRegression fit = LinearRegression.fit(rows(cars(), List.of("Mileage")), cars().column("Price"), 0);

        assertThat(fit.intercept()).isCloseTo(24764.558991201986, relative(24764.558991201986, 1e-9));
        assertThat(fit.coefficients()[0]).isCloseTo(-0.172520502602, relative(0.172520502602, 1e-9));
        assertThat(fit.rSquared()).isCloseTo(0.0204634472856, relative(0.0204634472856, 1e-9));
        assertThat(fit.sigma()).isCloseTo(9789.28828698, relative(9789.28828698, 1e-9));
    }

    /** REG-K2 and REG-K2-PI; also Hipparchus 3.1 OLSMultipleLinearRegression. */
    @Test
    void price_on_six_columns() throws IOException {
        LinearRegression fit = LinearRegression.fit(rows(cars(), K2), cars().column("Price"), 0);
        double[] expected = {-0.170517079438, 3200.124587565374, -1463.399110073486, 6205.511284114567,
            -2024.401107863606, 3327.143517319028};

        assertThat(fit.intercept()).isCloseTo(7323.164640767834, relative(7323.164640767834, 1e-9));
        for (int j = 0; j < expected.length; j++) {
            assertThat(fit.coefficients()[j]).isCloseTo(expected[j], relative(expected[j], 1e-9));
        }
        assertThat(fit.rSquared()).isCloseTo(0.44569092973, relative(0.44569092973, 1e-9));
        assertThat(fit.sigma()).isCloseTo(7387.11416403, relative(7387.11416403, 1e-9));
        assertThat(fit.predict(new double[] {20000, 6, 4, 1, 1, 1})).isCloseTo(24768.2278307, within(1e-5));
    }

    /** REG-K2-LOO: each car predicted by the fit without it, root mean square of the errors. */
    @Test
    void leaving_each_car_out_in_turn() throws IOException {
        double[][] x = rows(cars(), K2);
        double[] y = cars().column("Price");
        double squares = 0;
        for (int out = 0; out < y.length; out++) {
            int one = out;
            int[] kept = IntStream.range(0, y.length).filter(i -> i != one).toArray();
            LinearRegression fit = LinearRegression.fit(
                    Arrays.stream(kept).mapToObj(i -> x[i]).toArray(double[][]::new),
                    Arrays.stream(kept).mapToDouble(i -> y[i]).toArray(), 0);
            double error = y[one] - fit.predict(x[one]);
            squares += error * error;
        }

        assertThat(Math.sqrt(squares / y.length)).isCloseTo(7427.38050112, relative(7427.38050112, 1e-9));
    }

    /** REG-CARS-PI, the fit: stopping distance in feet on speed in mph; Ezekiel (1930), R datasets::cars. */
    @Test
    void stopping_distance_on_speed() {
        double[] speed = {4, 4, 7, 7, 8, 9, 10, 10, 10, 11, 11, 12, 12, 12, 12, 13, 13, 13, 13, 14, 14, 14, 14, 15, 15, 15,
            16, 16, 17, 17, 17, 18, 18, 18, 18, 19, 19, 19, 20, 20, 20, 20, 20, 22, 23, 24, 24, 24, 24, 25};
        double[] distance = {2, 10, 4, 22, 16, 10, 18, 26, 34, 17, 28, 14, 20, 24, 28, 26, 34, 34, 46, 26, 36, 60, 80, 20,
            26, 54, 32, 40, 32, 40, 50, 42, 56, 76, 84, 36, 46, 68, 32, 48, 52, 56, 64, 66, 54, 70, 92, 93, 120, 85};
        double[][] x = Arrays.stream(speed).mapToObj(s -> new double[] {s}).toArray(double[][]::new);

        LinearRegression fit = LinearRegression.fit(x, distance, 0);

        assertThat(fit.intercept()).isCloseTo(-17.579094891, relative(17.579094891, 1e-9));
        assertThat(fit.coefficients()[0]).isCloseTo(3.932408759, relative(3.932408759, 1e-9));
        assertThat(fit.predict(new double[] {21})).isCloseTo(65.0014890511, relative(65.0014890511, 1e-9));
    }

    /** REG-K3; smearing mean of exp(residual) by Duan (1983), JASA 78:605. */
    @Test
    void log_price_on_six_columns_and_its_smearing_mean() throws IOException {
        double[][] x = rows(cars(), K2);
        double[] y = logPrice(cars());
        LinearRegression fit = LinearRegression.fit(x, y, 0);
        double smearing = 0;
        for (int i = 0; i < y.length; i++) {
            smearing += Math.exp(y[i] - fit.predict(x[i])) / y.length;
        }
        double[] expected = {-7.382037997e-06, 0.1301967974, -0.03711791829, 0.3208307273, -0.08720132271, 0.1214251329};

        for (int j = 0; j < expected.length; j++) {
            assertThat(fit.coefficients()[j]).isCloseTo(expected[j], relative(expected[j], 1e-9));
        }
        assertThat(fit.rSquared()).isCloseTo(0.48362821717, within(1e-10));
        assertThat(fit.sigma()).isCloseTo(0.295809293033, within(1e-10));
        assertThat(smearing).isCloseTo(1.04623119034, within(1e-9));
    }

    /** REG-K4. */
    @Test
    void log_price_on_make_and_body() throws IOException {
        LinearRegression fit = LinearRegression.fit(rows(cars(), K4), logPrice(cars()), 0);

        assertThat(fit.intercept()).isCloseTo(9.028350428, within(1e-8));
        assertThat(fit.coefficients()[0]).isCloseTo(-8.209113838e-06, within(1e-14));
        assertThat(fit.coefficients()[1]).isCloseTo(0.1842714393, within(1e-9));
        assertThat(fit.coefficients()[6]).isCloseTo(0.4005898221, within(1e-9));
        assertThat(fit.coefficients()[9]).isCloseTo(0.6643986447, within(1e-9));
        assertThat(fit.rSquared()).isCloseTo(0.928952553764, within(1e-10));
        assertThat(fit.sigma()).isCloseTo(0.110279669917, within(1e-10));
    }

    /** Source: NIST StRD, Longley, certified values. */
    @Test
    void longley() {
        double[][] data = {
            {60323, 83.0, 234289, 2356, 1590, 107608, 1947}, {61122, 88.5, 259426, 2325, 1456, 108632, 1948},
            {60171, 88.2, 258054, 3682, 1616, 109773, 1949}, {61187, 89.5, 284599, 3351, 1650, 110929, 1950},
            {63221, 96.2, 328975, 2099, 3099, 112075, 1951}, {63639, 98.1, 346999, 1932, 3594, 113270, 1952},
            {64989, 99.0, 365385, 1870, 3547, 115094, 1953}, {63761, 100.0, 363112, 3578, 3350, 116219, 1954},
            {66019, 101.2, 397469, 2904, 3048, 117388, 1955}, {67857, 104.6, 419180, 2822, 2857, 118734, 1956},
            {68169, 108.4, 442769, 2936, 2798, 120445, 1957}, {66513, 110.8, 444546, 4681, 2637, 121950, 1958},
            {68655, 112.6, 482704, 3813, 2552, 123366, 1959}, {69564, 114.2, 502601, 3931, 2514, 125368, 1960},
            {69331, 115.7, 518173, 4806, 2572, 127852, 1961}, {70551, 116.9, 554894, 4007, 2827, 130081, 1962}
        };
        double[] y = Arrays.stream(data).mapToDouble(r -> r[0]).toArray();
        double[][] x = Arrays.stream(data).map(r -> Arrays.copyOfRange(r, 1, 7)).toArray(double[][]::new);
        double[] certified = {15.0618722713733, -0.0358191792925910, -2.02022980381683, -1.03322686717359,
            -0.0511041056535807, 1829.15146461355};

        LinearRegression fit = LinearRegression.fit(x, y, 0);

        assertThat(fit.intercept()).isCloseTo(-3482258.63459582, relative(3482258.63459582, 1e-7));
        for (int j = 0; j < certified.length; j++) {
            assertThat(fit.coefficients()[j]).isCloseTo(certified[j], relative(certified[j], 1e-7));
        }
        assertThat(fit.rSquared()).isCloseTo(0.995479004577296, within(1e-10));
        assertThat(fit.sigma()).isCloseTo(304.854073561965, relative(304.854073561965, 1e-7));
    }

    @Test
    void a_penalty_draws_coefficients_towards_zero_and_mends_collinear_columns() throws IOException {
        double[][] x = rows(cars(), K2);
        double[] y = cars().column("Price");
        LinearRegression free = LinearRegression.fit(x, y, 0);
        LinearRegression held = LinearRegression.fit(x, y, 0.5);
        assertThat(Math.abs(held.coefficients()[1])).isLessThan(Math.abs(free.coefficients()[1]));
        assertThat(held.rSquared()).isLessThan(free.rSquared());

        double[][] twice = Arrays.stream(x).map(r -> new double[] {r[0], 2 * r[0]}).toArray(double[][]::new);
        assertThatThrownBy(() -> LinearRegression.fit(twice, y, 0)).hasMessageContaining("linearly dependent");
        LinearRegression mended = LinearRegression.fit(twice, y, 1e-6);
        assertThat(mended.rSquared()).isCloseTo(0.0204634472856, within(1e-6));
    }
}
