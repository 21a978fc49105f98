package worthsaving.record;

import org.apache.commons.statistics.distribution.TDistribution;
import worthsaving.quantity.Range;

/**
 * What is believed of a positive quantity that varies from car to car, such as own hours per book hour: its logarithm is
 * normal with unknown mean and variance, under the conjugate normal-inverse-gamma prior. Updates by n logarithms with mean
 * y and sum of squares S about it: kappa' = kappa + n, mu' = (kappa mu + n y)/kappa', alpha' = alpha + n/2,
 * beta' = beta + S/2 + kappa n (y - mu)^2/(2 kappa'). The next car follows a Student t with 2 alpha degrees of freedom,
 * location mu and scale^2 = beta (kappa + 1)/(alpha kappa), in the logarithm. Source: Murphy (2007), Conjugate Bayesian
 * analysis of the Gaussian distribution, section 3; DeGroot (1970), Optimal Statistical Decisions, section 9.6.
 *
 * @param mu mean of the logarithm
 * @param kappa how many cars the belief about the mean is worth
 * @param alpha shape of the variance, above 1
 * @param beta scale of the variance, above 0
 */
public record LogNormal(double mu, double kappa, double alpha, double beta) {

    /** How far into its tails a range reaches: one car in a hundred lies below it, one above. */
    private static final double TAIL = 0.01;

    public LogNormal {
        if (!Double.isFinite(mu) || !(kappa > 0) || !(alpha > 1) || !(beta > 0)) {
            throw new IllegalArgumentException(
                    "needs a finite mean, kappa > 0, alpha > 1 and beta > 0, not " + mu + ", " + kappa + ", " + alpha
                            + ", " + beta);
        }
    }

    /**
     * The belief whose next car has the mean and the spread of a three-point range: s^2 = ln(1 + variance/mean^2),
     * m = ln(mean) - s^2/2 as of a log-normal, and beta such that the predictive variance of the logarithm is s^2.
     *
     * @param range above zero and with some width
     * @param cars what the belief is worth, above 1
     */
    public static LogNormal of(Range range, double cars) {
        double mean = range.mean();
        double variance = Math.log1p(range.variance() / (mean * mean));
        double alpha = 1 + cars / 2;
        return new LogNormal(Math.log(mean) - variance / 2, cars, alpha, variance * (alpha - 1) * cars / (cars + 1));
    }

    /** After seeing these, each above zero. */
    public LogNormal after(double... seen) {
        if (seen.length == 0) {
            return this;
        }
        double n = seen.length;
        double mean = 0;
        for (double x : seen) {
            if (!(x > 0) || Double.isInfinite(x)) {
                throw new IllegalArgumentException("only what is above zero can be learnt from, not " + x);
            }
            mean += Math.log(x) / n;
        }
        double squares = 0;
        for (double x : seen) {
            squares += (Math.log(x) - mean) * (Math.log(x) - mean);
        }
        double weight = kappa + n;
        return new LogNormal((kappa * mu + n * mean) / weight, weight, alpha + n / 2,
                beta + squares / 2 + kappa * n * (mean - mu) * (mean - mu) / (2 * weight));
    }

    /** Half of the next cars lie below. */
    public double median() {
        return Math.exp(mu);
    }

    /**
     * Of the next car.
     *
     * @param p above 0 and below 1
     */
    public double quantile(double p) {
        return Math.exp(mu + scale() * TDistribution.of(2 * alpha).inverseCumulativeProbability(p));
    }

    /** Probability that the next car lies at or below x. */
    public double cumulative(double x) {
        return x <= 0 ? 0 : TDistribution.of(2 * alpha).cumulativeProbability((Math.log(x) - mu) / scale());
    }

    /** Variance of the logarithm of the next car. */
    double predictiveVariance() {
        return scale() * scale() * alpha / (alpha - 1);
    }

    /** The next car as low, mode and high: one in a hundred below and above, and the mode of the logarithm between. */
    public Range range() {
        return new Range(quantile(TAIL), median(), quantile(1 - TAIL));
    }

    private double scale() {
        return Math.sqrt(beta * (kappa + 1) / (alpha * kappa));
    }
}
