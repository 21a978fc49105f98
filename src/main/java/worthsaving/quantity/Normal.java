package worthsaving.quantity;

import org.apache.commons.statistics.distribution.NormalDistribution;

/**
 * A normal quantity.
 *
 * @param standardDeviation above zero
 */
public record Normal(double mean, double standardDeviation) implements Distribution {

    static final NormalDistribution UNIT = NormalDistribution.of(0, 1);

    public Normal {
        if (!Double.isFinite(mean) || !(standardDeviation > 0) || Double.isInfinite(standardDeviation)) {
            throw new IllegalArgumentException("a normal quantity needs a finite mean and a standard deviation above"
                    + " zero, not " + mean + ", " + standardDeviation);
        }
    }

    @Override
    public double variance() {
        return standardDeviation * standardDeviation;
    }

    @Override
    public double quantile(double p) {
        return mean + standardDeviation * UNIT.inverseCumulativeProbability(p);
    }

    @Override
    public double cumulative(double x) {
        return UNIT.cumulativeProbability((x - mean) / standardDeviation);
    }

    /** mean - standard deviation x phi(z) / share. Source: Rockafellar and Uryasev (2000), Journal of Risk 2:21. */
    @Override
    public double meanOfWorst(double share) {
        double z = UNIT.inverseCumulativeProbability(Distribution.share(share));
        return mean - standardDeviation * UNIT.density(z) / share;
    }
}
