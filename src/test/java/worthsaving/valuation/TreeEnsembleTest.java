package worthsaving.valuation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;
import java.util.stream.IntStream;
import ml.dmlc.xgboost4j.java.Booster;
import ml.dmlc.xgboost4j.java.DMatrix;
import ml.dmlc.xgboost4j.java.XGBoost;
import ml.dmlc.xgboost4j.java.XGBoostError;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import smile.base.cart.Loss;
import smile.data.DataFrame;
import smile.data.formula.Formula;
import smile.data.vector.DoubleVector;
import smile.regression.GradientTreeBoost;
import worthsaving.quantity.Seed;

class TreeEnsembleTest {

    private static final int N = 3000;
    private static final String[] TYPES = {"q", "q", "c", "q"};
    private static final Boosting.Settings SETTINGS = new Boosting.Settings(40, 24, 0.1, 0.8, 0.75, 3);

    private static float[] x(String seed) {
        SplittableRandom random = Seed.DEFAULT.derive(seed).generator();
        float[] x = new float[N * TYPES.length];
        for (int i = 0; i < x.length; i++) {
            boolean code = i % TYPES.length == 2;
            x[i] = random.nextInt(10) == 0 ? Float.NaN : code ? random.nextInt(90) : (float) random.nextGaussian();
        }
        return x;
    }

    private static float[] y(float[] x) {
        SplittableRandom random = Seed.DEFAULT.derive("noise").generator();
        float[] y = new float[N];
        for (int i = 0; i < N; i++) {
            float code = x[i * 4 + 2];
            double wave = Float.isNaN(code) ? 2 : Math.sin(code * 7);
            double slope = Float.isNaN(x[i * 4]) ? 0.5 : x[i * 4];
            y[i] = (float) (wave + slope + 0.3 * random.nextGaussian());
        }
        return y;
    }

    /** The trees handed over and evaluated here agree with the library's own prediction, gaps and codes included. */
    @Test
    void agrees_with_the_library_that_fitted_it() throws XGBoostError {
        float[] x = x("train");
        TreeEnsemble ours = Boosting.fit(new Boosting.Rows(x, TYPES), y(x), 0.1, SETTINGS, new Seed(5));
        float[] fresh = x("fresh");
        DMatrix train = new DMatrix(x, N, TYPES.length, Float.NaN);
        train.setFeatureTypes(TYPES);
        train.setLabel(y(x));
        Map<String, Object> parameters = new HashMap<>(Map.of(
                "base_score", 0.0, "tree_method", "hist", "grow_policy", "lossguide", "max_depth", 0, "max_leaves", 24,
                "eta", 0.1, "subsample", 0.8, "colsample_bytree", 0.75, "min_child_weight", 3.0));
        parameters.putAll(Map.of("nthread", 8, "seed", 5, "objective", "reg:pseudohubererror", "huber_slope", 0.1));
        Booster booster = XGBoost.train(train, parameters, 40, Map.of(), null, null);
        DMatrix test = new DMatrix(fresh, N, TYPES.length, Float.NaN);
        test.setFeatureTypes(TYPES);
        float[][] theirs = booster.predict(test);

        assertThat(ours.trees()).isEqualTo(40);
        assertThat(ours.sets()).isNotEmpty();
        for (int i = 0; i < N; i++) {
            assertThat(ours.predict(fresh, i * TYPES.length)).isCloseTo(theirs[i][0], within(1e-5));
        }
    }

    /** The same for Smile, whose split thresholds are found by halving. */
    @Test
    void agrees_with_smile() {
        float[] x = x("train");
        float[] y = y(x);
        TreeEnsemble ours = SmileBoosting.fit(new Boosting.Rows(x, TYPES), y, 30, 20, 0.1, 5);
        double[][] rows = rowsForSmile(x);
        DataFrame columns = DataFrame.of(rows, "f0", "f1", "f2", "f3");
        DataFrame all = columns.merge(DoubleVector.of("y", IntStream.range(0, N).mapToDouble(i -> y[i]).toArray()));
        GradientTreeBoost theirs = GradientTreeBoost.fit(Formula.lhs("y"), all, Loss.lad(), 30, 20, 20, 5, 0.1, 1);
        float[] fresh = x("fresh");
        double[] expected = theirs.predict(DataFrame.of(rowsForSmile(fresh), "f0", "f1", "f2", "f3")
                .merge(DoubleVector.of("y", new double[N])));

        for (int i = 0; i < N; i++) {
            assertThat(ours.predict(fresh, i * TYPES.length)).isCloseTo(expected[i], within(1e-6));
        }
    }

    private static double[][] rowsForSmile(float[] x) {
        double[][] rows = new double[N][TYPES.length];
        for (int i = 0; i < x.length; i++) {
            rows[i / TYPES.length][i % TYPES.length] = Float.isNaN(x[i]) ? -1e9f : x[i];
        }
        return rows;
    }

    @ParameterizedTest
    @CsvSource({"0.1", "0.5", "0.9"})
    void a_quantile_fit_leaves_about_its_share_below(double p) {
        float[] x = x("train");
        float[] y = y(x);
        TreeEnsemble trees = Boosting.fitQuantile(
                new Boosting.Rows(x, TYPES), y, p, 0.05, new Boosting.Settings(100, 12, 0.1, 0.8, 1, 20), new Seed(5));
        int below = 0;
        for (int i = 0; i < N; i++) {
            below += y[i] < trees.predict(x, i * TYPES.length) ? 1 : 0;
        }

        assertThat((double) below / N).isCloseTo(p, within(0.05));
    }

    @Test
    void a_tree_by_hand() {
        // x0 < 1 ? 10 : (x1 in {3, 70} ? 20 : 30); a missing x0 goes second, a missing x1 first.
        TreeEnsemble tree = new TreeEnsemble(
                new int[] {0, -1, 4 + 2 + 1, -1, -1}, new float[] {1, 10, 0, 20, 30}, new long[][] {{1L << 3, 1L << 6}}, 2);

        assertThat(tree.predict(new float[] {0.5f, 0})).isEqualTo(10);
        assertThat(tree.predict(new float[] {1, 3})).isEqualTo(20);
        assertThat(tree.predict(new float[] {Float.NaN, 70})).isEqualTo(20);
        assertThat(tree.predict(new float[] {2, 4})).isEqualTo(30);
        assertThat(tree.predict(new float[] {2, 500})).isEqualTo(30);
        assertThat(tree.predict(new float[] {2, Float.NaN})).isEqualTo(20);
    }

    @Test
    void a_mean_of_ensembles_gives_the_mean_of_what_they_give() {
        float[] x = x("train");
        List<TreeEnsemble> some = IntStream.range(1, 4)
                .mapToObj(i -> Boosting.fit(new Boosting.Rows(x, TYPES), y(x), 0.1, SETTINGS, new Seed(i)))
                .toList();
        TreeEnsemble mean = TreeEnsemble.mean(some);
        float[] fresh = x("fresh");

        assertThat(mean.trees()).isEqualTo(120);
        assertThat(some.get(1).predict(fresh)).isNotEqualTo(some.get(0).predict(fresh));
        for (int i = 0; i < N; i++) {
            int at = i * TYPES.length;
            double expected = some.stream().mapToDouble(one -> one.predict(fresh, at)).average().orElseThrow();
            assertThat(mean.predict(fresh, at)).isCloseTo(expected, within(1e-6));
        }
        assertThat(TreeEnsemble.mean(List.of(some.get(0)))).isSameAs(some.get(0));
    }

    @Test
    void refuses_trees_that_are_not_whole() {
        float[] three = {1, 10, 20};
        long[][] none = {};
        assertThatThrownBy(() -> new TreeEnsemble(new int[] {0, -1}, new float[] {1, 10}, none, 1))
                .hasMessageContaining("cut short");
        assertThatThrownBy(() -> new TreeEnsemble(new int[] {4, -1, -1}, three, none, 1)).hasMessageContaining("node 0");
        assertThatThrownBy(() -> new TreeEnsemble(new int[] {2, -1, -1}, three, none, 1)).hasMessageContaining("node 0");
        assertThatThrownBy(() -> new TreeEnsemble(new int[] {0, -1, -1}, new float[] {1, 10}, none, 1))
                .hasMessageContaining("3 nodes but 2 values");
    }

    @Test
    void numbers_come_back_from_their_shortest_text() {
        SplittableRandom random = Seed.DEFAULT.derive("numerals").generator();
        for (int i = 0; i < 2000; i++) {
            double d = random.nextGaussian() * Math.pow(10, random.nextInt(-8, 8));
            float f = (float) d;
            assertThat(Double.parseDouble(Numerals.shortest(d).toString())).isEqualTo(d);
            assertThat(Float.parseFloat(Numerals.shortest(f).toString())).isEqualTo(f);
        }
        assertThat(Numerals.shortest(0.1f)).hasToString("0.1");
        long[] set = {-1L, 0, 5};
        assertThat(Arrays.equals(Numerals.set(Numerals.hex(set)), set)).isTrue();
    }
}
