package worthsaving.valuation;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;

/**
 * Held-out predictions of every training row, and the blend they choose.
 *
 * @param candidates ln price by each candidate, for each row
 * @param weights of the candidates, summing to 1
 * @param middle the blend
 * @param x the columns of each row as its held-out model sees them, followed by the middle
 */
record CrossValidation(
        TrainingSet set, double[][] candidates, double[] weights, double[] middle, float[] x) {

    private static final int GRID = 10;
    private static final int WIDTH = SpreadFitter.Residuals.WIDTH;

    /** @param points for each fold the model fitted without it */
    static CrossValidation of(TrainingSet set, List<PointModel> points) {
        int n = set.size();
        double[][] candidates = new double[n][];
        float[] x = new float[n * WIDTH];
        float[] one = new float[Encoder.WIDTH];
        for (int i = 0; i < n; i++) {
            candidates[i] = points.get(set.fold[i]).candidates(set.cars.get(i), one);
            System.arraycopy(one, 0, x, i * WIDTH, Encoder.WIDTH);
        }
        double[] weights = choose(candidates, set.y, points.get(0).trees());
        double[] middle = new double[n];
        for (int i = 0; i < n; i++) {
            middle[i] = blend(candidates[i], weights);
            x[i * WIDTH + WIDTH - 1] = (float) middle[i];
        }
        return new CrossValidation(set, candidates, weights, middle, x);
    }

    /** Weights on a grid of the simplex with the least mean absolute error of ln price; none where no trees are. */
    private static double[] choose(double[][] candidates, double[] y, List<TreeEnsemble> trees) {
        int[] fitted = IntStream.range(0, PointModel.CANDIDATES)
                .filter(c -> c == 0 || trees.get(c - 1).trees() > 0)
                .toArray();
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

    SpreadFitter.Residuals residuals() {
        float[] left = new float[middle.length];
        for (int i = 0; i < left.length; i++) {
            left[i] = (float) (set.y[i] - middle[i]);
        }
        return new SpreadFitter.Residuals(x, left, set.fold, middle);
    }

    /** Reach of row {@code i} by the ensembles that have not seen its fold. */
    double[] reach(List<Spread> reaches, int i) {
        return reaches.get(set.fold[i]).reach(Arrays.copyOfRange(x, i * WIDTH, (i + 1) * WIDTH));
    }

    /** Standardised held-out residual of every row. */
    double[] scores(List<Spread> reaches) {
        double[] scores = new double[middle.length];
        Arrays.setAll(scores, i -> Spread.standardise(set.y[i] - middle[i], reach(reaches, i)));
        return scores;
    }

    double[] candidate(int c) {
        return Arrays.stream(candidates).mapToDouble(row -> row[c]).toArray();
    }
}
