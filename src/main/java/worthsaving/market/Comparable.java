package worthsaving.market;

import java.time.LocalDate;
import java.util.Objects;
import worthsaving.quantity.Money;
import worthsaving.vehicle.Vehicle;

/**
 * A running car of known price that the user has found.
 *
 * @param kind whether the price was asked or paid
 * @param seen day of the price
 * @param origin where it was entered, such as {@code "comparables.csv, row 4"}
 */
public record Comparable(Vehicle car, Money price, PriceKind kind, LocalDate seen, String origin) {

    public Comparable {
        Objects.requireNonNull(car, "car");
        Objects.requireNonNull(kind, "kind");
        Objects.requireNonNull(seen, "seen");
        Objects.requireNonNull(origin, "origin");
        if (!(price.amount() > 0)) {
            throw new IllegalArgumentException("the price of a comparable must be above zero, not " + price);
        }
        if (kind != PriceKind.ASKING && kind != PriceKind.SALE) {
            throw new IllegalArgumentException("a comparable's price is asked or paid, not a " + kind);
        }
    }
}
