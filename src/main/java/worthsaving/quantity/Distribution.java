package worthsaving.quantity;

/**
 * A distribution of one real quantity, in the unit of its context.
 * Implementations are immutable and safe to share between threads.
 */
public interface Distribution {

    /** Steps of the integral where a distribution has no closed form. */
    int STEPS = 4_096;

    double mean();

    double variance();

    /**
     * Smallest value whose cumulative probability is at least {@code p}.
     *
     * @param p from 0 to 1
     * @throws IllegalArgumentException outside that range
     */
    double quantile(double p);

    /** Probability of a value at or below {@code x}. */
    double cumulative(double x);

    /**
     * Mean of the least {@code share} of the probability: the conditional value at risk at that level, (1 / share)
     * times the integral of the quantile function from 0 to share. Where no closed form is given, by the midpoint
     * rule over {@value #STEPS} steps.
     *
     * @param share above 0, at most 1
     */
    default double meanOfWorst(double share) {
        share(share);
        double sum = 0;
        for (int k = 0; k < STEPS; k++) {
            sum += quantile(share * (k + 0.5) / STEPS);
        }
        return sum / STEPS;
    }

    /** The same quantity multiplied by a positive factor. */
    default Distribution scaled(double factor) {
        return new Scaled(this, factor);
    }

    /** The share itself, when it lies above 0 and at most at 1. */
    static double share(double share) {
        if (!(share > 0 && share <= 1)) {
            throw new IllegalArgumentException("a share of the outcomes must lie above 0 and at most at 1, not " + share);
        }
        return share;
    }
}
