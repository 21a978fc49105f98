package worthsaving.record;

/**
 * A probability that was forecast, and whether it came so.
 *
 * @param subject what it was of, such as the id of a failure item
 * @param forecast from 0 to 1
 */
public record Chance(String subject, double forecast, boolean happened) {

    public Chance {
        if (!(forecast >= 0 && forecast <= 1)) {
            throw new IllegalArgumentException("a probability must lie in 0 to 1, not " + forecast);
        }
    }
}
