package worthsaving.quantity;

/**
 * A three-point estimate low &le; mode &le; high in some unit, read as a PERT-beta:
 * a beta on [low, high] with shapes a = 1 + 4 (mode - low)/(high - low) and
 * b = 1 + 4 (high - mode)/(high - low), so that the mean is (low + 4 mode + high)/6 and the
 * variance (mean - low)(high - mean)/7. Source: Malcolm, Roseboom, Clark and Fazar (1959),
 * Operations Research 7:646, in the exact-beta form of Vose (2008).
 */
public record Range(double low, double mode, double high) {

    public Range {
        if (!(Double.isFinite(low) && Double.isFinite(high) && low <= mode && mode <= high)) {
            throw new IllegalArgumentException(
                    "a range needs low <= mode <= high, not " + low + ", " + mode + ", " + high);
        }
    }

    public static Range exactly(double value) {
        return new Range(value, value, value);
    }

    public double mean() {
        return (low + 4 * mode + high) / 6;
    }

    public double variance() {
        double mean = mean();
        return (mean - low) * (high - mean) / 7;
    }

    public double width() {
        return high - low;
    }

    /** The end points and mode added one by one: the range of fully dependent parts. */
    public Range plus(Range other) {
        return new Range(low + other.low, mode + other.mode, high + other.high);
    }

    /** Scales by a factor of zero or more. */
    public Range times(double factor) {
        if (!(factor >= 0)) {
            throw new IllegalArgumentException("a range is scaled by zero or more, not " + factor);
        }
        return new Range(low * factor, mode * factor, high * factor);
    }

    public Distribution asPert() {
        return PertBeta.of(this);
    }
}
