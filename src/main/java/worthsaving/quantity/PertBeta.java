package worthsaving.quantity;

import org.apache.commons.statistics.distribution.BetaDistribution;

/** The PERT-beta of a {@link Range}; a point mass when the range has no width. */
record PertBeta(Range range, BetaDistribution beta) implements Distribution {

    static PertBeta of(Range range) {
        double width = range.width();
        if (width == 0) {
            return new PertBeta(range, null);
        }
        double a = 1 + 4 * (range.mode() - range.low()) / width;
        double b = 1 + 4 * (range.high() - range.mode()) / width;
        return new PertBeta(range, BetaDistribution.of(a, b));
    }

    @Override
    public double mean() {
        return range.mean();
    }

    @Override
    public double variance() {
        return range.variance();
    }

    @Override
    public double quantile(double p) {
        return beta == null
                ? range.low()
                : range.low() + range.width() * beta.inverseCumulativeProbability(p);
    }

    @Override
    public double cumulative(double x) {
        if (beta == null) {
            return x < range.low() ? 0 : 1;
        }
        return beta.cumulativeProbability((x - range.low()) / range.width());
    }

    /** low + width x a/(a + b) x I(x; a + 1, b) / share at the quantile x, with I the incomplete beta function. */
    @Override
    public double meanOfWorst(double share) {
        Distribution.share(share);
        if (beta == null) {
            return range.low();
        }
        double x = beta.inverseCumulativeProbability(share);
        double upTo = BetaDistribution.of(beta.getAlpha() + 1, beta.getBeta()).cumulativeProbability(x);
        return range.low() + range.width() * beta.getMean() * upTo / share;
    }
}
