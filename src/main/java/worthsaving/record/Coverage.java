package worthsaving.record;

import org.apache.commons.statistics.interval.BinomialConfidenceInterval;
import org.apache.commons.statistics.interval.Interval;

/**
 * How often an interval held what came, and what the true share may be.
 *
 * @param held cars inside
 * @param cars all cars
 * @param nominal share that should lie inside
 * @param low lower end of the exact 95 % confidence interval of the true share
 * @param high its upper end
 */
public record Coverage(int held, int cars, double nominal, double low, double high) {

    private static final double ERROR_RATE = 0.05;

    /**
     * Exact interval of Clopper and Pearson (1934), Biometrika 26:404: never too narrow, whatever the share.
     *
     * @param cars at least one
     */
    public static Coverage of(int held, int cars, double nominal) {
        Interval interval = BinomialConfidenceInterval.CLOPPER_PEARSON.fromErrorRate(cars, held, ERROR_RATE);
        return new Coverage(held, cars, nominal, interval.getLowerBound(), interval.getUpperBound());
    }

    /** Score interval of Wilson (1927), Journal of the American Statistical Association 22:209: {low, high}. */
    static double[] wilson(int held, int cars) {
        Interval interval = BinomialConfidenceInterval.WILSON_SCORE.fromErrorRate(cars, held, ERROR_RATE);
        return new double[] {interval.getLowerBound(), interval.getUpperBound()};
    }

    public double share() {
        return (double) held / cars;
    }

    /** Whether the nominal share is ruled out at 95 %. */
    public boolean off() {
        return nominal < low || nominal > high;
    }
}
