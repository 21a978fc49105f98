package worthsaving.valuation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.SplittableRandom;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import worthsaving.market.NumberTable;
import worthsaving.quantity.Seed;

class ConformalTest {

    /** CONF-9-0.1 and following. Source: Romano, Patterson and Candes (2019), theorem 1; Vovk et al. (2005). */
    @ParameterizedTest
    @CsvSource({"9, 0.1, 9", "19, 0.1, 18", "99, 0.1, 90", "99, 0.05, 95", "100, 0.1, 91"})
    void the_rank_is_that_of_the_theorem(int n, double alpha, int rank) {
        double[] scores = IntStream.rangeClosed(1, n).mapToDouble(i -> n + 1 - i).toArray();

        assertThat(Conformal.rank(n, alpha)).isEqualTo(rank);
        assertThat(Conformal.upper(scores, alpha)).isEqualTo(rank);
    }

    /** CONF-10-0.05: ceil(10.45) = 11 of 10. */
    @Test
    void too_few_scores_give_an_endless_interval() {
        assertThat(Conformal.upper(new double[10], 0.05)).isInfinite();
    }

    /** CONF-CARS-0.1, -0.2, -0.5 and -fit: split of the cars in file order, absolute residuals of ln price; computed with R. */
    @ParameterizedTest
    @CsvSource({
        "0.1, 182, 0.211984933973, 183",
        "0.2, 162, 0.129408261111, 159",
        "0.5, 101, 0.0758268918227, 100"
    })
    void split_conformal_on_the_cars_of_kuiper(double alpha, int rank, double quantile, int hits) throws IOException {
        NumberTable cars = LinearRegressionTest.cars();
        double[][] x = LinearRegressionTest.rows(cars, LinearRegressionTest.K4);
        double[] y = LinearRegressionTest.logPrice(cars);
        int[] train = IntStream.range(0, 804).filter(i -> i % 2 == 0).toArray();
        int[] calibrate = IntStream.range(0, 804).filter(i -> (i + 1) % 4 == 2).toArray();
        int[] test = IntStream.range(0, 804).filter(i -> (i + 1) % 4 == 0).toArray();
        LinearRegression fit = LinearRegression.fit(
                Arrays.stream(train).mapToObj(i -> x[i]).toArray(double[][]::new),
                Arrays.stream(train).mapToDouble(i -> y[i]).toArray(), 0);

        double[] scores = Arrays.stream(calibrate).mapToDouble(i -> Math.abs(y[i] - fit.predict(x[i]))).toArray();
        double q = Conformal.upper(scores, alpha);

        double squares = Arrays.stream(test).mapToDouble(i -> Math.pow(y[i] - fit.predict(x[i]), 2)).sum();

        assertThat(fit.rSquared()).isCloseTo(0.930060570568, within(1e-8));
        assertThat(fit.sigma()).isCloseTo(0.108677858073, within(1e-8));
        assertThat(Math.sqrt(squares / test.length)).isCloseTo(0.112140614247, within(1e-8));
        assertThat(Conformal.rank(scores.length, alpha)).isEqualTo(rank);
        assertThat(q).isCloseTo(quantile, within(1e-8));
        assertThat(Arrays.stream(test).filter(i -> Math.abs(y[i] - fit.predict(x[i])) <= q).count()).isEqualTo(hits);
    }

    /** Coverage of conformalised quantiles lies in [1-a, 1-a+1/(n+1)] whatever the quantiles (same theorem). */
    @ParameterizedTest
    @CsvSource({"0.1, 49", "0.2, 49", "0.2, 199", "0.5, 19"})
    void quantile_offsets_cover_within_the_bound(double alpha, int n) {
        SplittableRandom random = Seed.DEFAULT.derive("coverage " + alpha + n).generator();
        int rounds = 20_000;
        int hits = 0;
        for (int round = 0; round < rounds; round++) {
            double[] low = new double[n + 1];
            double[] high = new double[n + 1];
            double[] y = new double[n + 1];
            for (int i = 0; i <= n; i++) {
                double x = random.nextDouble();
                y[i] = x + (0.2 + x) * random.nextGaussian();
                low[i] = x - 0.3;
                high[i] = x + 0.1 + 0.5 * x;
            }
            double offset = Conformal.quantileOffset(
                    Arrays.copyOf(low, n), Arrays.copyOf(high, n), Arrays.copyOf(y, n), alpha);
            if (y[n] >= low[n] - offset && y[n] <= high[n] + offset) {
                hits++;
            }
        }
        double noise = 4 * Math.sqrt(alpha * (1 - alpha) / rounds);

        assertThat((double) hits / rounds).isBetween(1 - alpha - noise, 1 - alpha + 1.0 / (n + 1) + noise);
    }

    /** CONF-BETA: given the calibration scores the coverage follows Beta(901, 100) at n = 1000 (Vovk 2012). */
    @Test
    void coverage_given_the_calibration_scores_follows_the_beta_law() {
        SplittableRandom random = Seed.DEFAULT.derive("beta law").generator();
        int rounds = 4000;
        double[] coverage = new double[rounds];
        // Of uniform scores the share that a bound covers is the bound itself.
        Arrays.setAll(coverage, r -> Conformal.upper(random.doubles(1000).toArray(), 0.1));
        Arrays.sort(coverage);
        double mean = Arrays.stream(coverage).average().orElseThrow();
        double sd = Math.sqrt(Arrays.stream(coverage).map(c -> (c - mean) * (c - mean)).sum() / (rounds - 1));

        // Tolerances are four standard errors of the simulation.
        assertThat(mean).isCloseTo(0.9000999000999, within(4 * 0.00947 / Math.sqrt(rounds)));
        assertThat(sd).isCloseTo(0.00947315094160992, within(4 * 0.00947 / Math.sqrt(2.0 * rounds)));
        assertThat(coverage[rounds / 20]).isCloseTo(0.884075488583474, within(0.0013));
        assertThat(coverage[rounds - rounds / 20]).isCloseTo(0.9152152323315307, within(0.0013));
    }

    @Test
    void a_whole_distribution_covers_on_each_side() {
        SplittableRandom random = Seed.DEFAULT.derive("sides").generator();
        double[] levels = {0.1, 0.5, 0.9};
        List<double[]> all = new ArrayList<>();
        int rounds = 20_000;
        int[] below = new int[3];
        for (int round = 0; round < rounds; round++) {
            double[] scores = random.doubles(49).map(u -> -Math.log(u)).sorted().toArray();
            double[] values = Conformal.distribution(scores, levels);
            double fresh = -Math.log(random.nextDouble());
            for (int k = 0; k < 3; k++) {
                below[k] += fresh <= values[k] ? 1 : 0;
            }
            all.add(values);
        }

        assertThat((double) below[0] / rounds).isBetween(0.1 - 1.0 / 50 - 0.01, 0.1 + 0.01);
        assertThat((double) below[2] / rounds).isBetween(0.9 - 0.01, 0.9 + 1.0 / 50 + 0.01);
        assertThat(all).allSatisfy(v -> assertThat(v).isSorted());
    }
}
