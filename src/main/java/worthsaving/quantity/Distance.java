package worthsaving.quantity;

import java.util.Objects;

/** A distance in the unit it was given in; one mile is exactly 1.609344 km (international yard, 1959). */
public record Distance(double value, Unit unit) {

    /** Units an odometer may show. */
    public enum Unit { MILES, KILOMETRES }

    private static final double KM_PER_MILE = 1.609344;

    public Distance {
        Objects.requireNonNull(unit, "unit");
        if (!(value >= 0) || Double.isInfinite(value)) {
            throw new IllegalArgumentException("a distance must be zero or more, not " + value);
        }
    }

    public static Distance ofMiles(double miles) {
        return new Distance(miles, Unit.MILES);
    }

    public static Distance ofKilometres(double kilometres) {
        return new Distance(kilometres, Unit.KILOMETRES);
    }

    public double miles() {
        return unit == Unit.MILES ? value : value / KM_PER_MILE;
    }

    public double kilometres() {
        return unit == Unit.KILOMETRES ? value : value * KM_PER_MILE;
    }
}
