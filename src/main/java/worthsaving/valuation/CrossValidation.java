package worthsaving.valuation;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * Held-out predictions of the rows of the folds held out, and the blend they choose. Arrays have one entry for each
 * of these rows.
 *
 * @param y ln price
 * @param part of each row, from 0, see {@link TrainingSet#PARTS}
 * @param candidates ln price by each candidate, for each row
 * @param weights of the candidates, summing to 1
 * @param middle the blend
 * @param x the columns of each row as its held-out model sees them, followed by the middle
 * @param types of these columns, as in {@link Boosting.Rows}
 * @param doubt of each row as its held-out model sees it, see {@link Guard#spread}
 */
record CrossValidation(
        double[] y,
        int[] part,
        double[][] candidates,
        double[] weights,
        double[] middle,
        float[] x,
        String[] types,
        double[] doubt) {

    private static final int GRID = 10;

    /**
     * @param points for each fold the model fitted without it
     * @param guard tells the doubt about each row
     */
    static CrossValidation of(TrainingSet set, List<PointModel> points, Guard guard) {
        int[] rows = set.rowsHeld();
        int n = rows.length;
        double[] y = new double[n];
        int[] part = new int[n];
        double[][] candidates = new double[n][];
        String[] types = types(points.get(0).encoder());
        int width = types.length;
        float[] x = new float[n * width];
        float[] one = new float[width - 1];
        double[] doubt = new double[n];
        for (int i = 0; i < n; i++) {
            CarFacts car = set.cars.get(rows[i]);
            y[i] = set.y[rows[i]];
            part[i] = set.part[rows[i]];
            PointModel unseen = points.get(set.fold[rows[i]]);
            candidates[i] = unseen.candidates(car, one);
            doubt[i] = guard.spread(car, unseen.encoder());
            System.arraycopy(one, 0, x, i * width, width - 1);
        }
        double[] weights = choose(candidates, y, points.get(0));
        double[] middle = new double[n];
        for (int i = 0; i < n; i++) {
            middle[i] = blend(candidates[i], weights);
            x[i * width + width - 1] = (float) middle[i];
        }
        return new CrossValidation(y, part, candidates, weights, middle, x, types, doubt);
    }

    private static String[] types(Encoder encoder) {
        return Stream.concat(Arrays.stream(encoder.types()), Stream.of("q")).toArray(String[]::new);
    }

    /** Weights on a grid of the simplex with the least mean absolute error of ln price; none for what is not fitted. */
    private static double[] choose(double[][] candidates, double[] y, PointModel point) {
        int[] fitted = IntStream.range(0, PointModel.CANDIDATES).filter(point::fitted).toArray();
        double[] best = null;
        double least = Double.POSITIVE_INFINITY;
        for (double[] parts : simplex(fitted.length)) {
            double[] weights = new double[PointModel.CANDIDATES];
            for (int f = 0; f < fitted.length; f++) {
                weights[fitted[f]] = parts[f];
            }
            double error = 0;
            for (int i = 0; i < y.length; i++) {
                error += Math.abs(y[i] - blend(candidates[i], weights));
            }
            if (error < least) {
                least = error;
                best = weights;
            }
        }
        return best;
    }

    /** All weights in steps of 1 / {@value #GRID} that sum to 1. */
    static List<double[]> simplex(int count) {
        List<double[]> all = new ArrayList<>();
        fill(new int[count], 0, GRID, all);
        return all;
    }

    private static void fill(int[] parts, int at, int left, List<double[]> all) {
        if (at == parts.length - 1) {
            parts[at] = left;
            all.add(Arrays.stream(parts).mapToDouble(p -> (double) p / GRID).toArray());
            return;
        }
        for (int p = 0; p <= left; p++) {
            parts[at] = p;
            fill(parts, at + 1, left - p, all);
        }
    }

    private static double blend(double[] candidates, double[] weights) {
        double sum = 0;
        for (int c = 0; c < weights.length; c++) {
            sum += weights[c] * candidates[c];
        }
        return sum;
    }

    /** Rows outside part {@code out}. */
    int[] rowsWithout(int out) {
        return IntStream.range(0, y.length).filter(i -> part[i] != out).toArray();
    }

    SpreadFitter.Residuals residuals() {
        float[] left = new float[middle.length];
        for (int i = 0; i < left.length; i++) {
            left[i] = (float) (y[i] - middle[i]);
        }
        return new SpreadFitter.Residuals(x, types, left, middle);
    }

    /** Reach of row {@code i} by the ensembles that have not seen its part. */
    double[] reach(List<Spread> reaches, int i) {
        double[] seen = reaches.get(part[i]).reach(Arrays.copyOfRange(x, i * types.length, (i + 1) * types.length));
        return Spread.widened(seen, doubt[i]);
    }

    /** Standardised held-out residual of every row. */
    double[] scores(List<Spread> reaches) {
        double[] scores = new double[middle.length];
        Arrays.setAll(scores, i -> Spread.standardise(y[i] - middle[i], reach(reaches, i)));
        return scores;
    }

    double[] candidate(int c) {
        return Arrays.stream(candidates).mapToDouble(row -> row[c]).toArray();
    }
}
