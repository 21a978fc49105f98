package worthsaving.quantity;

/**
 * A distribution of one real quantity, in the unit of its context.
 * Implementations are immutable and safe to share between threads.
 */
public interface Distribution {

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

    /** The same quantity multiplied by a positive factor. */
    default Distribution scaled(double factor) {
        return new Scaled(this, factor);
    }
}
