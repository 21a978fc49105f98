package worthsaving.quantity;

/** Working time in hours, never negative. */
public record Hours(double value) implements Comparable<Hours> {

    public static final Hours NONE = new Hours(0);

    public Hours {
        if (!(value >= 0) || Double.isInfinite(value)) {
            throw new IllegalArgumentException("hours must be zero or more, not " + value);
        }
    }

    public static Hours of(double value) {
        return new Hours(value);
    }

    public static Hours ofMinutes(double minutes) {
        return new Hours(minutes / 60);
    }

    public Hours plus(Hours other) {
        return new Hours(value + other.value);
    }

    public Hours times(double factor) {
        return new Hours(value * factor);
    }

    /** Cost of this time at a rate per hour. */
    public Money at(Money hourly) {
        return hourly.times(value);
    }

    @Override
    public int compareTo(Hours other) {
        return Double.compare(value, other.value);
    }
}
