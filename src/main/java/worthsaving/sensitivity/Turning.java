package worthsaving.sensitivity;

import java.util.OptionalDouble;
import java.util.function.DoubleUnaryOperator;
import org.hipparchus.analysis.solvers.BrentSolver;

/**
 * Where a result turns between gain and loss as one figure moves; zero counts as gain.
 *
 * @param at nearest turning point to where the figure stands; empty when there is none in its range
 * @param gainsBelow whether it is a gain just below the point, or throughout when there is none
 */
public record Turning(OptionalDouble at, boolean gainsBelow) {

    private static final int MOST_STEPS = 100;

    /**
     * Brent's method (1973) between the end and where the figure stands. Of a result that turns more than once
     * between them one turning point is found, and of one that turns twice none.
     *
     * @param now where the figure stands, from low to high
     * @param accuracy of the point, above zero
     */
    public static Turning of(DoubleUnaryOperator result, double low, double now, double high, double accuracy) {
        if (!(low <= now && now <= high) || !(accuracy > 0)) {
            throw new IllegalArgumentException("a figure must stand in its range and be wanted to an accuracy above"
                    + " zero, not " + low + ", " + now + ", " + high + ", " + accuracy);
        }
        boolean gainsNow = result.applyAsDouble(now) >= 0;
        boolean gainsLow = result.applyAsDouble(low) >= 0;
        if (gainsLow != gainsNow) {
            return new Turning(OptionalDouble.of(root(result, low, now, accuracy)), gainsLow);
        }
        if (result.applyAsDouble(high) >= 0 != gainsNow) {
            return new Turning(OptionalDouble.of(root(result, now, high, accuracy)), gainsNow);
        }
        return new Turning(OptionalDouble.empty(), gainsNow);
    }

    /** Of a result that falls, or rises, by one for one of the figure; the point may lie outside the range. */
    public static Turning at(double point, boolean gainsBelow, double low, double high) {
        return point >= low && point <= high ? new Turning(OptionalDouble.of(point), gainsBelow)
                : new Turning(OptionalDouble.empty(), point > high == gainsBelow);
    }

    private static double root(DoubleUnaryOperator result, double from, double to, double accuracy) {
        return new BrentSolver(accuracy).solve(MOST_STEPS, result::applyAsDouble, from, to);
    }
}
