package worthsaving.valuation;

import java.util.Arrays;
import worthsaving.quantity.Distribution;

/**
 * A distribution given by its quantiles at rising probabilities, linear between them; it ends at the first and
 * the last. Mean and variance are those of the whole piecewise uniform distribution, which for residuals of
 * ln price is the smearing estimate (Duan 1983, JASA 78:605).
 */
final class QuantileDistribution implements Distribution {

    private final double[] levels;
    private final double[] values;
    private final double mean;
    private final double variance;

    /** @param values rising, one per level; the first and last level stand for 0 and 1 */
    QuantileDistribution(double[] levels, double[] values) {
        this.levels = levels.clone();
        this.values = values.clone();
        this.levels[0] = 0;
        this.levels[levels.length - 1] = 1;
        double first = 0;
        double second = 0;
        for (int i = 1; i < values.length; i++) {
            double share = this.levels[i] - this.levels[i - 1];
            double a = values[i - 1];
            double b = values[i];
            first += share * (a + b) / 2;
            second += share * (a * a + a * b + b * b) / 3;
        }
        mean = first;
        variance = Math.max(0, second - first * first);
    }

    @Override
    public double mean() {
        return mean;
    }

    @Override
    public double variance() {
        return variance;
    }

    @Override
    public double quantile(double p) {
        if (!(p >= 0 && p <= 1)) {
            throw new IllegalArgumentException("a probability must lie in 0 to 1, not " + p);
        }
        int i = Arrays.binarySearch(levels, p);
        if (i >= 0) {
            return values[i];
        }
        int upper = -i - 1;
        double share = (p - levels[upper - 1]) / (levels[upper] - levels[upper - 1]);
        return values[upper - 1] + share * (values[upper] - values[upper - 1]);
    }

    @Override
    public double cumulative(double x) {
        int last = values.length - 1;
        if (x < values[0]) {
            return 0;
        }
        if (x >= values[last]) {
            return 1;
        }
        int upper = 1;
        while (values[upper] <= x) {
            upper++;
        }
        double width = values[upper] - values[upper - 1];
        return levels[upper - 1] + (levels[upper] - levels[upper - 1]) * (x - values[upper - 1]) / width;
    }

    /** Exact: the quantile function is linear between its points. */
    @Override
    public double meanOfWorst(double share) {
        double last = quantile(Distribution.share(share));
        double sum = 0;
        for (int i = 1; i < values.length && levels[i - 1] < share; i++) {
            double upTo = Math.min(levels[i], share);
            double value = levels[i] > share ? last : values[i];
            sum += (upTo - levels[i - 1]) * (values[i - 1] + value) / 2;
        }
        return sum / share;
    }
}
