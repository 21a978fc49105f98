package worthsaving.casebook;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.Map;
import java.util.Objects;
import java.util.OptionalDouble;
import worthsaving.quantity.Hours;
import worthsaving.quantity.Money;

/**
 * What came of a finished car.
 *
 * @param paid price paid for it
 * @param sale what it fetched
 * @param cost all cash laid out, the price included
 * @param hours own hours
 * @param daysToSell from ready to sold
 * @param items failure items that were looked at, and whether each had failed
 */
public record Actual(
        LocalDate bought,
        LocalDate sold,
        Money paid,
        Money sale,
        Money cost,
        Hours hours,
        OptionalDouble daysToSell,
        Map<String, Boolean> items) {

    public Actual {
        Objects.requireNonNull(hours, "hours");
        Objects.requireNonNull(daysToSell, "daysToSell");
        items = Map.copyOf(items);
        if (sold.isBefore(bought)) {
            throw new IllegalArgumentException("it cannot be sold on " + sold + ", before it was bought on " + bought);
        }
        if (!paid.currency().equals(sale.currency()) || !paid.currency().equals(cost.currency())) {
            throw new IllegalArgumentException("price, sale and cost must be in one currency");
        }
    }

    /** From purchase to money. */
    public long days() {
        return ChronoUnit.DAYS.between(bought, sold);
    }

    public Money profitBeforeHours() {
        return sale.minus(cost);
    }
}
