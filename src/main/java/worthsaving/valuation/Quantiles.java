package worthsaving.valuation;

import java.util.Arrays;
import java.util.stream.DoubleStream;

/** Order statistics of numbers some of which are not stated. */
final class Quantiles {

    private Quantiles() {}

    /** Smallest stated value with at least the share {@code p} at or below it; NaN when none is stated. */
    static double of(DoubleStream values, double p) {
        double[] sorted = values.filter(v -> !Double.isNaN(v)).sorted().toArray();
        return sorted.length == 0 ? Double.NaN : ofSorted(sorted, p);
    }

    static double ofSorted(double[] sorted, double p) {
        return sorted[(int) Math.min(sorted.length - 1, Math.max(0, Math.ceil(p * sorted.length) - 1))];
    }

    static double median(double[] values) {
        return of(Arrays.stream(values), 0.5);
    }
}
