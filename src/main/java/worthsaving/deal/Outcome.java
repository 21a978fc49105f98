package worthsaving.deal;

import java.util.Arrays;

/**
 * A distribution of money (or of hours or days) as weighted outcomes, sorted. Immutable.
 *
 * <p>A quasi-random run gives thousands of light outcomes, a tree a handful of heavy ones; both are
 * exact here. The mean of the worst share a is the conditional value at risk with atoms: the outcome
 * that straddles the limit counts only by the part inside it. Source: Rockafellar and Uryasev (2002),
 * Journal of Banking and Finance 26:1443.
 */
public final class Outcome {

    private final double[] given;
    private final double[] weights;
    private final double mean;
    /** Made on first use: much is asked for its mean alone. Any thread makes the same. */
    private volatile Sorted sorted;

    /** Outcomes in ascending order with the probability up to each of them. */
    private record Sorted(double[] values, double[] cumulative) {}

    private Outcome(double[] values, double[] weights, double sum) {
        this.given = values.clone();
        this.weights = weights.clone();
        double first = 0;
        for (int i = 0; i < values.length; i++) {
            this.weights[i] /= sum;
            first += this.weights[i] * values[i];
        }
        this.mean = first;
    }

    /**
     * @param values outcomes in any order, finite
     * @param weights zero or more, not all zero; they are scaled to add up to 1
     */
    public static Outcome of(double[] values, double[] weights) {
        if (values.length == 0 || values.length != weights.length) {
            throw new IllegalArgumentException("outcomes and weights must be as many and at least one: "
                    + values.length + " and " + weights.length);
        }
        double sum = 0;
        for (int i = 0; i < values.length; i++) {
            if (!Double.isFinite(values[i]) || !(weights[i] >= 0)) {
                throw new IllegalArgumentException(
                        "outcome " + i + " must be finite with a weight of zero or more: " + values[i] + ", "
                                + weights[i]);
            }
            sum += weights[i];
        }
        if (!(sum > 0) || Double.isInfinite(sum)) {
            throw new IllegalArgumentException("the weights must add up to something positive, not " + sum);
        }
        return new Outcome(values, weights, sum);
    }

    /** Equally likely outcomes. */
    public static Outcome equallyLikely(double... values) {
        double[] weights = new double[values.length];
        Arrays.fill(weights, 1);
        return of(values, weights);
    }

    private Sorted sorted() {
        if (sorted == null) {
            int[] order = order(given);
            double[] v = new double[given.length];
            double[] c = new double[given.length];
            double sum = 0;
            for (int i = 0; i < v.length; i++) {
                v[i] = given[order[i]];
                sum += weights[order[i]];
                c[i] = sum;
            }
            c[c.length - 1] = 1;
            sorted = new Sorted(v, c);
        }
        return sorted;
    }

    /** Order of the values: sorted by their leading bits as integers, then put right by insertion. */
    private static int[] order(double[] values) {
        int bits = 32 - Integer.numberOfLeadingZeros(values.length);
        long mask = (1L << bits) - 1;
        long[] keys = new long[values.length];
        for (int i = 0; i < keys.length; i++) {
            long raw = Double.doubleToLongBits(values[i] + 0.0);
            keys[i] = (raw ^ (raw >> 63 & Long.MAX_VALUE)) & ~mask | i;
        }
        Arrays.sort(keys);
        int[] order = new int[keys.length];
        for (int i = 0; i < order.length; i++) {
            int next = (int) (keys[i] & mask);
            int at = i;
            while (at > 0 && values[order[at - 1]] > values[next]) {
                order[at] = order[at - 1];
                at--;
            }
            order[at] = next;
        }
        return order;
    }

    public int size() {
        return given.length;
    }

    public double mean() {
        return mean;
    }

    public double standardDeviation() {
        double second = 0;
        for (int i = 0; i < given.length; i++) {
            second += weights[i] * (given[i] - mean) * (given[i] - mean);
        }
        return Math.sqrt(second);
    }

    public double least() {
        return sorted().values()[0];
    }

    public double greatest() {
        return sorted().values()[given.length - 1];
    }

    /** Probability of an outcome strictly below x. */
    public double below(double x) {
        double[] values = sorted().values();
        int lo = 0;
        int hi = values.length;
        while (lo < hi) {
            int mid = (lo + hi) >>> 1;
            if (values[mid] < x) {
                lo = mid + 1;
            } else {
                hi = mid;
            }
        }
        return lo == 0 ? 0 : sorted().cumulative()[lo - 1];
    }

    /** Probability of an outcome strictly below zero. */
    public double chanceOfLoss() {
        return below(0);
    }

    /** Smallest outcome whose cumulative probability is at least p. */
    public double quantile(double p) {
        checkShare(p, 0);
        double[] cumulative = sorted().cumulative();
        int at = Arrays.binarySearch(cumulative, p);
        int i = at >= 0 ? at : -at - 1;
        while (i > 0 && cumulative[i - 1] >= p) {
            i--;
        }
        return sorted().values()[Math.min(i, given.length - 1)];
    }

    /**
     * Mean of the worst (least) share of the outcomes.
     *
     * @param share above 0, at most 1
     */
    public double meanOfWorst(double share) {
        checkShare(share, Double.MIN_VALUE);
        double[] values = sorted().values();
        double[] cumulative = sorted().cumulative();
        double sum = 0;
        double before = 0;
        for (int i = 0; i < values.length && before < share; i++) {
            double upTo = Math.min(cumulative[i], share);
            sum += (upTo - before) * values[i];
            before = upTo;
        }
        return sum / share;
    }

    /**
     * The sure amount that is worth as much to somebody with exponential utility u(x) = -exp(-x/R):
     * -R ln E[exp(-x/R)]. It lies between the least outcome and the mean, and nears the mean as R grows. Source:
     * Pratt (1964), Econometrica 32:122; Howard's "certain equivalent".
     *
     * @param tolerance R, the risk tolerance, above zero
     */
    public double certaintyEquivalent(double tolerance) {
        if (!(tolerance > 0) || Double.isInfinite(tolerance)) {
            throw new IllegalArgumentException("a risk tolerance must be above zero, not " + tolerance);
        }
        double least = Arrays.stream(given).min().orElseThrow();
        double sum = 0;
        for (int i = 0; i < given.length; i++) {
            sum += weights[i] * Math.exp((least - given[i]) / tolerance);
        }
        return least - tolerance * Math.log(sum);
    }

    /**
     * The same distribution in {@code n} equally likely parts, each at its mean: the mean and the mean of any
     * worst k/n stay as they are, at a fraction of the memory.
     */
    public Outcome inParts(int n) {
        double[] values = sorted().values();
        double[] cumulative = sorted().cumulative();
        double[] parts = new double[n];
        double before = 0;
        int part = 0;
        for (int i = 0; i < values.length; i++) {
            while (part < n - 1 && cumulative[i] > (part + 1.0) / n) {
                double edge = Math.max(before, (part + 1.0) / n);
                parts[part++] += (edge - before) * values[i] * n;
                before = edge;
            }
            parts[part] += (cumulative[i] - before) * values[i] * n;
            before = cumulative[i];
        }
        return equallyLikely(parts);
    }

    /**
     * Probability in each of equally wide bins from the least to the greatest outcome; a bin holds its
     * lower end, the last one both ends. One bin holds everything when all outcomes are the same.
     */
    public double[] histogram(int bins) {
        double[] values = sorted().values();
        double[] cumulative = sorted().cumulative();
        double[] shares = new double[bins];
        double width = (greatest() - least()) / bins;
        double before = 0;
        for (int i = 0; i < values.length; i++) {
            int bin = width > 0 ? (int) Math.min(bins - 1.0, (values[i] - least()) / width) : 0;
            shares[bin] += cumulative[i] - before;
            before = cumulative[i];
        }
        return shares;
    }

    /** The same outcomes in the same order with the same weights. */
    @Override
    public boolean equals(Object other) {
        return other instanceof Outcome o && Arrays.equals(given, o.given) && Arrays.equals(weights, o.weights);
    }

    @Override
    public int hashCode() {
        return 31 * Arrays.hashCode(given) + Arrays.hashCode(weights);
    }

    private static void checkShare(double share, double low) {
        if (!(share >= low && share <= 1)) {
            throw new IllegalArgumentException("a share of the outcomes must lie in 0 to 1, not " + share);
        }
    }
}
