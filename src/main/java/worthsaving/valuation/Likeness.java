package worthsaving.valuation;

import java.util.Arrays;
import java.util.List;
import java.util.SplittableRandom;
import org.hipparchus.linear.Array2DRowRealMatrix;
import org.hipparchus.linear.ArrayRealVector;
import org.hipparchus.linear.CholeskyDecomposition;
import org.hipparchus.linear.RealMatrix;
import worthsaving.quantity.Seed;

/**
 * How much alike the prices of two cars are: Matern covariance of order 3/2 over a distance in which every fact has a
 * weight of its own (Rasmussen and Williams 2006, sections 4.2.1 and 5.1, automatic relevance determination).
 *
 * @param weight of each fact's squared distance, 0 or more
 * @param noise variance of a single price about what cars just like it fetch, as a share of the process's own
 */
record Likeness(double[] weight, double noise) {

    /** Choice of the weights costs the cube of the rows; so many tell them well enough. */
    private static final int MOST_ROWS = 400;
    private static final double LEAST_NOISE = 0.003;
    private static final double MOST_NOISE = 3;
    private static final double LEAST_WEIGHT = 1e-4;
    private static final double MOST_WEIGHT = 8;
    private static final double[] FIRST_WEIGHTS = {0.03, 0.1, 0.3};
    private static final double[] FIRST_NOISES = {0.03, 0.1, 0.3};
    private static final double FIRST_STEP = 4;
    private static final double LAST_STEP = 1.5;
    private static final double LEAST_GAIN = 0.05;

    static double covariance(double squaredDistance) {
        double r = Math.sqrt(3 * squaredDistance);
        return (1 + r) * Math.exp(-r);
    }

    double squared(FactSpace space, FactSpace.Point a, FactSpace.Point b) {
        double squared = 0;
        for (int f = 0; f < weight.length; f++) {
            if (weight[f] > 0) {
                squared += weight[f] * space.apart(f, a, b);
            }
        }
        return squared;
    }

    /** Squared distance of two rows. */
    interface Distances {
        double squared(int i, int j);
    }

    /** The covariance matrix of {@code n} rows with noise on its diagonal, ready to be solved. */
    static CholeskyDecomposition decomposed(int n, double noise, Distances between) {
        double[][] k = new double[n][n];
        for (int i = 0; i < n; i++) {
            for (int j = 0; j < i; j++) {
                k[i][j] = covariance(between.squared(i, j));
                k[j][i] = k[i][j];
            }
            k[i][i] = 1 + noise;
        }
        return new CholeskyDecomposition(new Array2DRowRealMatrix(k, false), 1e-9, 1e-13);
    }

    /** Weights and noise that make these values most likely, found by steps in one of them at a time. */
    static Likeness choose(FactSpace space, List<FactSpace.Point> points, double[] y, Seed seed) {
        return new Search(space, points, y, some(points.size(), seed)).run();
    }

    /** At most {@value #MOST_ROWS} rows drawn without replacement. */
    private static int[] some(int n, Seed seed) {
        SplittableRandom random = seed.generator();
        int[] order = new int[n];
        for (int i = 0; i < n; i++) {
            int j = random.nextInt(i + 1);
            order[i] = order[j];
            order[j] = i;
        }
        return Arrays.copyOf(order, Math.min(n, MOST_ROWS));
    }

    private static final class Search {
        private final double[][][] apart;
        private final double[] y;
        private double[] weight;
        private double noise;
        private double best = Double.NEGATIVE_INFINITY;

        private Search(FactSpace space, List<FactSpace.Point> points, double[] all, int[] rows) {
            int n = rows.length;
            y = new double[n];
            double mean = Arrays.stream(rows).mapToDouble(i -> all[i]).average().orElseThrow();
            Arrays.setAll(y, i -> all[rows[i]] - mean);
            apart = new double[space.facts()][][];
            for (int f = 0; f < apart.length; f++) {
                double[][] d = new double[n][n];
                boolean any = false;
                for (int i = 0; i < n; i++) {
                    for (int j = 0; j < n; j++) {
                        d[i][j] = space.apart(f, points.get(rows[i]), points.get(rows[j]));
                        any |= d[i][j] > 0;
                    }
                }
                apart[f] = any ? d : null;
            }
        }

        private Likeness run() {
            for (double w : FIRST_WEIGHTS) {
                double[] same = new double[apart.length];
                Arrays.setAll(same, f -> apart[f] == null ? 0 : w);
                double[][] d = distances(same);
                for (double s : FIRST_NOISES) {
                    if (better(logLikelihood(d, s))) {
                        weight = same.clone();
                        noise = s;
                    }
                }
            }
            for (double step = FIRST_STEP; step > LAST_STEP;) {
                if (!pass(step)) {
                    step = Math.sqrt(step);
                }
            }
            return new Likeness(weight, noise);
        }

        /** Tries a step up and a step down in every weight and in the noise. */
        private boolean pass(double step) {
            boolean moved = false;
            for (int f = 0; f <= apart.length; f++) {
                for (double factor : new double[] {step, 1 / step}) {
                    if (tried(f, factor)) {
                        moved = true;
                        break;
                    }
                }
            }
            return moved;
        }

        private boolean tried(int f, double factor) {
            if (f == apart.length) {
                double other = noise * factor;
                if (other >= LEAST_NOISE && other <= MOST_NOISE && better(logLikelihood(distances(weight), other))) {
                    noise = other;
                    return true;
                }
                return false;
            }
            double other = weight[f] * factor;
            if (apart[f] == null || other < LEAST_WEIGHT || other > MOST_WEIGHT) {
                return false;
            }
            double[] changed = weight.clone();
            changed[f] = other;
            if (better(logLikelihood(distances(changed), noise))) {
                weight = changed;
                return true;
            }
            return false;
        }

        private boolean better(double value) {
            if (value > best + LEAST_GAIN) {
                best = value;
                return true;
            }
            return false;
        }

        private double[][] distances(double[] weights) {
            double[][] sum = new double[y.length][y.length];
            for (int f = 0; f < weights.length; f++) {
                if (weights[f] > 0) {
                    for (int i = 0; i < y.length; i++) {
                        double[] to = sum[i];
                        double[] from = apart[f][i];
                        for (int j = 0; j < to.length; j++) {
                            to[j] += weights[f] * from[j];
                        }
                    }
                }
            }
            return sum;
        }

        /** Up to a constant, with the variance of the process at its best value (ibid., section 5.4.1). */
        private double logLikelihood(double[][] squared, double share) {
            int n = y.length;
            CholeskyDecomposition parts = decomposed(n, share, (i, j) -> squared[i][j]);
            double[] solved = parts.getSolver().solve(new ArrayRealVector(y, false)).toArray();
            double fit = 0;
            double logDeterminant = 0;
            RealMatrix l = parts.getLT();
            for (int i = 0; i < n; i++) {
                fit += y[i] * solved[i];
                logDeterminant += Math.log(l.getEntry(i, i));
            }
            return -0.5 * n * Math.log(fit / n) - logDeterminant;
        }
    }
}
