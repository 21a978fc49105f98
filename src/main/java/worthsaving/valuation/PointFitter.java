package worthsaving.valuation;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;
import worthsaving.quantity.Seed;

/**
 * Fits the middle of ln price on all folds but one. Robust and absolute trees learn what the hedonic
 * regression leaves; the square ones learn ln price itself, with the regression as a column, so that they err
 * differently. All see for every row a regression and target statistics that have not seen the row's own fold.
 */
final class PointFitter {

    private static final double ROBUST = 0.05;
    private static final double NEARLY_SQUARE = 1;
    private static final double ROW_SHARE = 0.8;
    private static final double COLUMN_SHARE = 0.5;
    private static final double ROWS_FOR_WHOLE_LEAVES = 10_000;
    private static final double ROBUST_LEAF = 3;
    private static final double SQUARE_LEAF = 10;
    private static final double ABSOLUTE_LEAF = 5;
    private static final int SMILE_TREES = 200;
    private static final double SMILE_STEP = 0.1;
    private static final int SMILE_LEAF = 10;

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
        int width = encoder.width();
        float[] x = new float[rows.length * width];
        float[] left = new float[rows.length];
        float[] centred = new float[rows.length];
        for (int i = 0; i < rows.length; i++) {
            CarFacts car = set.cars.get(rows[i]);
            int k = set.fold[rows[i]];
            double start = base[k].predict(car);
            encoder.encode(car, unseen[k], start, x, i * width);
            left[i] = (float) (set.y[rows[i]] - start);
            centred[i] = (float) (set.y[rows[i]] - center);
        }
        Boosting.Rows matrix = new Boosting.Rows(x, encoder.types());
        List<Seed> seeds = seeds(seed, out < 0 ? settings.repeats() : 1);
        List<TreeEnsemble> trees = new ArrayList<>();
        for (Ensemble ensemble : Ensemble.ALL) {
            if (!settings.ensembles().contains(ensemble)) {
                trees.add(TreeEnsemble.NONE);
                continue;
            }
            Boosting.Settings grown = trees(settings, ensemble, rows.length);
            float[] target = ensemble.onHedonic ? left : centred;
            trees.add(TreeEnsemble.mean(seeds.stream().map(s -> fit(ensemble, matrix, target, grown, s)).toList()));
        }
        double[] regressionAlone = new double[PointModel.CANDIDATES];
        regressionAlone[0] = 1;
        return new PointModel(encoder, hedonic, center, trees, set.processOn(rows, center), regressionAlone);
    }

    /** The seed itself, then as many derived from it as are wanted. */
    private static List<Seed> seeds(Seed seed, int count) {
        return IntStream.range(0, count).mapToObj(i -> i == 0 ? seed : seed.derive("again " + i)).toList();
    }

    private static TreeEnsemble fit(
            Ensemble ensemble, Boosting.Rows rows, float[] y, Boosting.Settings trees, Seed seed) {
        return switch (ensemble) {
            case ROBUST -> Boosting.fit(rows, y, ROBUST, trees, seed.derive("robust trees"));
            case SQUARE -> Boosting.fit(rows, y, NEARLY_SQUARE, trees, seed.derive("square trees"));
            case ABSOLUTE -> Boosting.fitAbsolute(rows, y, trees, seed.derive("absolute trees"));
            case ABSOLUTE_BY_SMILE -> SmileBoosting.fit(
                    rows, y, SMILE_TREES, Math.max(2, trees.leaves() / 2), SMILE_STEP, SMILE_LEAF);
        };
    }

    private static Boosting.Settings trees(FitSettings settings, Ensemble ensemble, int rows) {
        boolean medians = ensemble == Ensemble.ABSOLUTE;
        double leastLeafWeight = switch (ensemble) {
            case ROBUST -> ROBUST_LEAF;
            case SQUARE -> SQUARE_LEAF;
            default -> ABSOLUTE_LEAF;
        };
        return new Boosting.Settings(
                medians ? Math.max(1, settings.trees() / 2) : settings.trees(),
                settings.leavesFor(rows),
                medians ? Math.min(1, 2 * settings.shrinkage()) : settings.shrinkage(),
                ROW_SHARE,
                COLUMN_SHARE,
                Math.max(1, leastLeafWeight * Math.min(1, rows / ROWS_FOR_WHOLE_LEAVES)));
    }
}
