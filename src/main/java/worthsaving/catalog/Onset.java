package worthsaving.catalog;

import java.util.Objects;
import java.util.OptionalDouble;
import worthsaving.quantity.Distance;
import worthsaving.quantity.Probability;

/**
 * Chance that an item has failed and stands unrepaired on a car of a given age and mileage.
 *
 * <p>F = 1 - (1 - event) exp(-(t / scale)^shape), a two-parameter Weibull in wear t beside an event
 * chance that does not depend on wear (theft, flood, collision). Wear is counted in years:
 * t = (1 - w) age + w miles / 12,000, with w the share that mileage has in it. Source of the law:
 * Weibull (1951), Journal of Applied Mechanics 18:293; the 12,000 miles a year are common practice,
 * no source. Wear beyond {@value #LAST_WEAR} years counts as that: a car that old has been mended before, and
 * the law is fitted to fifteen years at most.
 *
 * @param shape Weibull shape, above 0; below 1 early failures, above 1 wear-out
 * @param scaleYears Weibull scale in years of wear, above 0; infinite when only the event counts
 * @param mileageShare w, from 0 (age alone) to 1 (mileage alone)
 * @param event chance that does not depend on wear
 * @param odds what the odds F/(1 - F) are multiplied by, above 0: what the user's own finished cars teach; 1 for the law alone
 */
public record Onset(double shape, double scaleYears, double mileageShare, Probability event, double odds) {

    public static final double MILES_PER_YEAR = 12_000;

    /** Years; a guess. */
    public static final double LAST_WEAR = 20;

    public Onset {
        Objects.requireNonNull(event, "event");
        if (!(shape > 0) || !(scaleYears > 0) || !(mileageShare >= 0 && mileageShare <= 1)) {
            throw new IllegalArgumentException("onset needs shape > 0, scale > 0 and a mileage share in 0 to 1");
        }
        if (!(odds > 0) || Double.isInfinite(odds)) {
            throw new IllegalArgumentException("odds can only be multiplied by something above 0, not " + odds);
        }
    }

    /** By the law alone. */
    public Onset(double shape, double scaleYears, double mileageShare, Probability event) {
        this(shape, scaleYears, mileageShare, event, 1);
    }

    /**
     * The same with its odds multiplied.
     *
     * @param factor above 0
     */
    public Onset withOdds(double factor) {
        return new Onset(shape, scaleYears, mileageShare, event, odds * factor);
    }

    /** @param ageYears zero or more */
    public Probability prior(double ageYears, Distance odometer) {
        double wear = Math.min(wear(ageYears, odometer.miles()), LAST_WEAR);
        double survival = Math.exp(-Math.pow(wear / scaleYears, shape));
        double sound = (1 - event.value()) * survival;
        double failed = 1 - sound;
        return Probability.of(odds == 1 ? failed : odds * failed / (sound + odds * failed));
    }

    /**
     * Years from now until half of the cars on which it is sound now have it failed, by the law of wear alone: the
     * time in which survival halves. Empty where that takes the car beyond {@link #LAST_WEAR} years of wear, of which
     * the law knows nothing.
     *
     * @param ageYears zero or more
     * @param milesPerYear driven from now on, zero or more
     */
    public OptionalDouble yearsUntilHalf(double ageYears, Distance odometer, double milesPerYear) {
        double now = wear(ageYears, odometer.miles());
        double aYear = wear(1, milesPerYear);
        double then = scaleYears * Math.pow(Math.pow(now / scaleYears, shape) + Math.log(2), 1 / shape);
        return then <= LAST_WEAR && aYear > 0 ? OptionalDouble.of((then - now) / aYear) : OptionalDouble.empty();
    }

    private double wear(double years, double miles) {
        return (1 - mileageShare) * years + mileageShare * miles / MILES_PER_YEAR;
    }
}
