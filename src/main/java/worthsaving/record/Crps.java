package worthsaving.record;

import org.apache.commons.statistics.distribution.NormalDistribution;

/**
 * Continuous ranked probability score: the integral of (F(x) - 1[x >= y])^2 over x, in the unit of y; for a point
 * forecast the absolute error. Smaller is better. Source: Gneiting and Raftery (2007), Journal of the American
 * Statistical Association 102:359, section 4.2.
 */
public final class Crps {

    private static final NormalDistribution STANDARD = NormalDistribution.of(0, 1);

    private Crps() {}

    /**
     * Of a normal forecast: s (z (2 Phi(z) - 1) + 2 phi(z) - 1/sqrt(pi)) with z = (y - mean)/s. Source: Gneiting and
     * Raftery (2007), equation 21 with the sign turned.
     *
     * @param sd above 0
     */
    public static double normal(double mean, double sd, double y) {
        if (!(sd > 0)) {
            throw new IllegalArgumentException("a standard deviation must be above 0, not " + sd);
        }
        double z = (y - mean) / sd;
        return sd * (z * (2 * STANDARD.cumulativeProbability(z) - 1) + 2 * STANDARD.density(z) - 1 / Math.sqrt(Math.PI));
    }

    /**
     * Of the ensemble taken as the whole distribution: mean |x_i - y| - sum over i, j of |x_i - x_j| / (2 n^2).
     * Source: Gneiting and Raftery (2007), equation 20.
     */
    public static double of(Ensemble forecast, double y) {
        double n = forecast.size();
        return meanDistance(forecast, y) - pairs(forecast) / (n * n);
    }

    /**
     * Of the ensemble taken as a sample of a distribution, without the penalty for being small:
     * mean |x_i - y| - sum over i, j of |x_i - x_j| / (2 n (n - 1)). Source: Ferro (2014), Quarterly Journal of the
     * Royal Meteorological Society 140:1917.
     *
     * @param sample at least two values
     */
    public static double fair(Ensemble sample, double y) {
        double n = sample.size();
        if (n < 2) {
            throw new IllegalArgumentException("the fair score needs two values or more");
        }
        return meanDistance(sample, y) - pairs(sample) / (n * (n - 1));
    }

    private static double meanDistance(Ensemble forecast, double y) {
        double sum = 0;
        for (double x : forecast.values()) {
            sum += Math.abs(x - y);
        }
        return sum / forecast.size();
    }

    /** Sum of |x_i - x_j| over pairs i < j; the values are sorted, so each counts by its rank. */
    private static double pairs(Ensemble forecast) {
        double[] x = forecast.values();
        double sum = 0;
        for (int i = 0; i < x.length; i++) {
            sum += (2.0 * i - x.length + 1) * x[i];
        }
        return sum;
    }
}
