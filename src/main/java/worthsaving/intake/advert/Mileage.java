package worthsaving.intake.advert;

import java.util.Objects;
import java.util.Optional;
import worthsaving.quantity.Distance;

/**
 * What an advert says of the odometer.
 *
 * @param distance empty when the seller says that the true mileage is unknown
 * @param lowerBound true for masked digits ("131xxx"): the distance is the least it can be
 * @param unit the unit as written ("k", "k mi", "km", "miles"), "masked", "TMU", or empty for a bare number
 */
public record Mileage(Optional<Distance> distance, boolean lowerBound, String unit) {

    public Mileage {
        Objects.requireNonNull(distance, "distance");
        Objects.requireNonNull(unit, "unit");
    }
}
