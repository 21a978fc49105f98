package worthsaving.catalog;

import java.util.Objects;
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
 */
public record Onset(double shape, double scaleYears, double mileageShare, Probability event) {

    public static final double MILES_PER_YEAR = 12_000;

    /** Years; a guess. */
    public static final double LAST_WEAR = 20;

    public Onset {
        Objects.requireNonNull(event, "event");
        if (!(shape > 0) || !(scaleYears > 0) || !(mileageShare >= 0 && mileageShare <= 1)) {
            throw new IllegalArgumentException("onset needs shape > 0, scale > 0 and a mileage share in 0 to 1");
        }
    }

    /** @param ageYears zero or more */
    public Probability prior(double ageYears, Distance odometer) {
        double wear = (1 - mileageShare) * ageYears + mileageShare * odometer.miles() / MILES_PER_YEAR;
        wear = Math.min(wear, LAST_WEAR);
        double survival = Math.exp(-Math.pow(wear / scaleYears, shape));
        return Probability.of(1 - (1 - event.value()) * survival);
    }
}
