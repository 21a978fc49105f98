package worthsaving.quantity;

/** A three-point estimate of working time, low end zero or more. */
public record HoursRange(Range hours) {

    public static final HoursRange NONE = new HoursRange(Range.exactly(0));

    public HoursRange {
        if (hours.low() < 0) {
            throw new IllegalArgumentException("hours must be zero or more, not " + hours.low());
        }
    }

    public static HoursRange of(double low, double mode, double high) {
        return new HoursRange(new Range(low, mode, high));
    }

    public Hours mean() {
        return Hours.of(hours.mean());
    }

    public HoursRange plus(HoursRange other) {
        return new HoursRange(hours.plus(other.hours));
    }
}
