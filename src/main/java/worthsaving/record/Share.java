package worthsaving.record;

import org.apache.commons.statistics.distribution.BetaDistribution;

/**
 * What is believed of a share: a beta distribution, conjugate to the binomial. After k of n it is
 * beta(a + k, b + n - k). Source: Gelman et al. (2013), Bayesian Data Analysis, 3rd edition, section 2.4.
 *
 * @param a above 0
 * @param b above 0; a + b is how many cars the belief is worth
 */
public record Share(double a, double b) {

    public Share {
        if (!(a > 0 && b > 0)) {
            throw new IllegalArgumentException("a beta needs a > 0 and b > 0, not " + a + ", " + b);
        }
    }

    /**
     * @param mean above 0 and below 1
     * @param cars what it is worth, above 0
     */
    public static Share of(double mean, double cars) {
        return new Share(mean * cars, (1 - mean) * cars);
    }

    public Share after(int happened, int of) {
        if (happened < 0 || happened > of) {
            throw new IllegalArgumentException(happened + " of " + of + " cannot be");
        }
        return new Share(a + happened, b + of - happened);
    }

    public double mean() {
        return a / (a + b);
    }

    /** @param p from 0 to 1 */
    public double quantile(double p) {
        return BetaDistribution.of(a, b).inverseCumulativeProbability(p);
    }
}
