package worthsaving.quantity;

/**
 * A quantity whose logarithm is normal.
 *
 * @param mu mean of the logarithm
 * @param sigma standard deviation of the logarithm, above zero
 */
public record LogNormal(double mu, double sigma) implements Distribution {

    public LogNormal {
        if (!Double.isFinite(mu) || !(sigma > 0) || Double.isInfinite(sigma)) {
            throw new IllegalArgumentException("a lognormal quantity needs a finite mu and a sigma above zero, not " + mu
                    + ", " + sigma);
        }
    }

    /**
     * The one with these 10 % and 90 % quantiles: median sqrt(low x high), sigma = ln(high / low) / (2 z of 90 %).
     *
     * @param low above zero and below {@code high}
     */
    public static LogNormal between(double low, double high) {
        if (!(low > 0 && low < high) || Double.isInfinite(high)) {
            throw new IllegalArgumentException("needs a low figure above zero and a higher one, not " + low + ", " + high);
        }
        double z = Normal.UNIT.inverseCumulativeProbability(0.9);
        return new LogNormal((Math.log(low) + Math.log(high)) / 2, Math.log(high / low) / (2 * z));
    }

    @Override
    public double mean() {
        return Math.exp(mu + sigma * sigma / 2);
    }

    @Override
    public double variance() {
        return Math.expm1(sigma * sigma) * mean() * mean();
    }

    @Override
    public double quantile(double p) {
        return Math.exp(mu + sigma * Normal.UNIT.inverseCumulativeProbability(p));
    }

    @Override
    public double cumulative(double x) {
        return x <= 0 ? 0 : Normal.UNIT.cumulativeProbability((Math.log(x) - mu) / sigma);
    }

    /** mean x Phi(z - sigma) / share: the partial expectation of a lognormal, closed form. */
    @Override
    public double meanOfWorst(double share) {
        double z = Normal.UNIT.inverseCumulativeProbability(Distribution.share(share));
        return mean() * Normal.UNIT.cumulativeProbability(z - sigma) / share;
    }
}
