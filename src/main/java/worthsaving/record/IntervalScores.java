package worthsaving.record;

/** Scores of a quantile or an interval, in the unit of what is forecast; smaller is better. */
public final class IntervalScores {

    private IntervalScores() {}

    /**
     * Pinball loss of a quantile forecast: tau (y - q) above it, (1 - tau) (q - y) below. Source: Koenker and Bassett
     * (1978), Econometrica 46:33.
     *
     * @param tau share of the quantile, above 0 and below 1
     */
    public static double pinball(double quantile, double tau, double y) {
        requireInside(tau);
        return y >= quantile ? tau * (y - quantile) : (1 - tau) * (quantile - y);
    }

    /**
     * Score of a central interval: its width, and 2/alpha for every unit by which y misses it. Source: Winkler (1972),
     * Journal of the American Statistical Association 67:187; Gneiting and Raftery (2007), section 6.2.
     *
     * @param alpha share that should fall outside, above 0 and below 1
     */
    public static double winkler(double low, double high, double alpha, double y) {
        requireInside(alpha);
        if (!(low <= high)) {
            throw new IllegalArgumentException("an interval needs low <= high, not " + low + ", " + high);
        }
        return high - low + 2 / alpha * (Math.max(0, low - y) + Math.max(0, y - high));
    }

    private static void requireInside(double share) {
        if (!(share > 0 && share < 1)) {
            throw new IllegalArgumentException("a share must lie above 0 and below 1, not " + share);
        }
    }
}
