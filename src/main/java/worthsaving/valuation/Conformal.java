package worthsaving.valuation;

import java.util.Arrays;

/**
 * Ranks of split conformal prediction. With n exchangeable scores the ceil((n+1)(1-a))-th smallest covers a new
 * score with probability between 1 - a and 1 - a + 1/(n+1) (Vovk et al. 2005; Romano, Patterson and Candes 2019,
 * theorem 1).
 */
public final class Conformal {

    private Conformal() {}

    /**
     * Score that covers a new one with probability 1 - {@code alpha} or a little more.
     *
     * @return infinity when there are too few scores for that
     */
    public static double upper(double[] scores, double alpha) {
        double[] sorted = scores.clone();
        Arrays.sort(sorted);
        return upperOfSorted(sorted, alpha);
    }

    /** Rank of the covering score, from 1; more than n when there are too few. */
    public static long rank(int n, double alpha) {
        double exact = (n + 1) * (1 - alpha);
        // (n + 1)(1 - alpha) may exceed a whole number by rounding alone.
        return (long) Math.ceil(exact - 1e-9);
    }

    static double upperOfSorted(double[] sorted, double alpha) {
        long rank = rank(sorted.length, alpha);
        return rank > sorted.length ? Double.POSITIVE_INFINITY : sorted[(int) Math.max(rank, 1) - 1];
    }

    /**
     * The offset of conformalised quantile regression: the score is how far y lies outside [low, high],
     * negative inside; the interval [low - offset, high + offset] covers with probability 1 - {@code alpha}.
     */
    public static double quantileOffset(double[] low, double[] high, double[] y, double alpha) {
        double[] scores = new double[y.length];
        Arrays.setAll(scores, i -> Math.max(low[i] - y[i], y[i] - high[i]));
        return upper(scores, alpha);
    }

    /**
     * Value at each level of a whole conformal distribution: ranks from above for levels over one half, from
     * below for those under it, so that each one-sided coverage holds. Levels beyond the data take the extremes.
     *
     * @param sorted scores in ascending order, at least one
     */
    static double[] distribution(double[] sorted, double[] levels) {
        int n = sorted.length;
        double[] values = new double[levels.length];
        for (int i = 0; i < levels.length; i++) {
            long rank = levels[i] > 0.5 ? rank(n, 1 - levels[i]) : n + 1 - rank(n, levels[i]);
            values[i] = sorted[(int) Math.min(Math.max(rank, 1), n) - 1];
        }
        return values;
    }
}
