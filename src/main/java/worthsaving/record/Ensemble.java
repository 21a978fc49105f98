package worthsaving.record;

import java.util.Arrays;
import java.util.function.DoubleUnaryOperator;

/**
 * A forecast distribution as equally likely values in ascending order: its quantiles at (i + 1/2)/n. Values that
 * come more than once are a point mass. Immutable.
 */
public final class Ensemble {

    /** Enough that a score of the quantiles is the score of the distribution to about one part in a thousand. */
    public static final int USUAL_SIZE = 100;

    private final double[] values;

    private Ensemble(double[] sorted) {
        this.values = sorted;
    }

    /** @param values in any order, finite, at least one */
    public static Ensemble of(double... values) {
        if (values.length == 0 || Arrays.stream(values).anyMatch(v -> !Double.isFinite(v))) {
            throw new IllegalArgumentException("a forecast needs at least one value, and finite ones");
        }
        double[] sorted = values.clone();
        Arrays.sort(sorted);
        return new Ensemble(sorted);
    }

    /** The distribution with this quantile function, at the usual size. */
    public static Ensemble ofQuantiles(DoubleUnaryOperator quantile) {
        double[] values = new double[USUAL_SIZE];
        Arrays.setAll(values, i -> quantile.applyAsDouble((i + 0.5) / USUAL_SIZE));
        return of(values);
    }

    public int size() {
        return values.length;
    }

    public double[] values() {
        return values.clone();
    }

    public double mean() {
        return Arrays.stream(values).average().orElseThrow();
    }

    /**
     * The value whose rank is nearest to share p, interpolated between neighbours.
     *
     * @param p from 0 to 1
     */
    public double quantile(double p) {
        if (!(p >= 0 && p <= 1)) {
            throw new IllegalArgumentException("a share must lie in 0 to 1, not " + p);
        }
        double at = Math.max(0, Math.min(values.length - 1.0, p * values.length - 0.5));
        int below = (int) at;
        int above = Math.min(below + 1, values.length - 1);
        return values[below] + (at - below) * (values[above] - values[below]);
    }

    /** How many values lie strictly below y. */
    int below(double y) {
        int at = Arrays.binarySearch(values, y);
        int i = at >= 0 ? at : -at - 1;
        while (i > 0 && values[i - 1] == y) {
            i--;
        }
        return i;
    }

    /** How many values equal y. */
    int at(double y) {
        int i = below(y);
        int count = 0;
        while (i + count < values.length && values[i + count] == y) {
            count++;
        }
        return count;
    }

    /** Whether the i-th value comes only once. */
    boolean single(int i) {
        return at(values[i]) == 1;
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof Ensemble e && Arrays.equals(values, e.values);
    }

    @Override
    public int hashCode() {
        return Arrays.hashCode(values);
    }

    @Override
    public String toString() {
        return "Ensemble of " + values.length + ", " + values[0] + " to " + values[values.length - 1];
    }
}
