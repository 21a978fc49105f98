package worthsaving.valuation;

import java.util.Arrays;
import worthsaving.quantity.Seed;

/**
 * Fits the middle of ln price on all folds but one. The robust trees learn what the hedonic regression leaves;
 * the square ones learn ln price itself, with the regression as a column, so that the two err differently. Both
 * see for every row a regression and target statistics that have not seen the row's own fold.
 */
final class PointFitter {

    private static final double ROBUST = 0.1;
    private static final double NEARLY_SQUARE = 1;
    private static final double ROW_SHARE = 0.8;
    private static final double COLUMN_SHARE = 0.7;
    private static final double ROBUST_LEAF = 3;
    private static final double SQUARE_LEAF = 10;
    private static final int ABSOLUTE_TREES = 200;
    private static final double ABSOLUTE_STEP = 0.1;
    private static final int ABSOLUTE_LEAF = 10;

    private PointFitter() {}

    /** @param out the fold left out, -1 for none */
    static PointModel fit(TrainingSet set, int out, FitSettings settings, Seed seed) {
        Encoder encoder = set.encoderWithout(out, out);
        Hedonic hedonic = set.hedonicWithout(out, out);
        Encoder[] unseen = new Encoder[set.folds];
        Hedonic[] base = new Hedonic[set.folds];
        for (int k = 0; k < set.folds; k++) {
            if (k != out) {
                unseen[k] = set.encoderWithout(out, k);
                base[k] = set.hedonicWithout(out, k);
            }
        }
        int[] rows = set.rowsWithout(out);
        double center = Arrays.stream(rows).mapToDouble(i -> set.y[i]).average().orElseThrow();
        float[] x = new float[rows.length * Encoder.WIDTH];
        float[] left = new float[rows.length];
        float[] centred = new float[rows.length];
        for (int i = 0; i < rows.length; i++) {
            CarFacts car = set.cars.get(rows[i]);
            int k = set.fold[rows[i]];
            double start = base[k].predict(car);
            encoder.encode(car, unseen[k], start, x, i * Encoder.WIDTH);
            left[i] = (float) (set.y[rows[i]] - start);
            centred[i] = (float) (set.y[rows[i]] - center);
        }
        Boosting.Rows matrix = new Boosting.Rows(x, Encoder.types());
        Boosting.Settings robust = new Boosting.Settings(
                settings.trees(), settings.leaves(), settings.shrinkage(), ROW_SHARE, COLUMN_SHARE, ROBUST_LEAF);
        Boosting.Settings square = new Boosting.Settings(
                settings.trees(), settings.leaves(), settings.shrinkage(), ROW_SHARE, COLUMN_SHARE, SQUARE_LEAF);
        return new PointModel(
                encoder,
                hedonic,
                center,
                Boosting.fit(matrix, left, ROBUST, robust, seed.derive("robust trees")),
                Boosting.fit(matrix, centred, NEARLY_SQUARE, square, seed.derive("square trees")),
                SmileBoosting.fit(
                        matrix, left, ABSOLUTE_TREES, settings.leaves() / 2, ABSOLUTE_STEP, ABSOLUTE_LEAF),
                new double[] {0, 1, 0, 0});
    }
}
