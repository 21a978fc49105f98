package worthsaving.intake;

import java.time.LocalDate;
import java.util.Currency;
import java.util.Objects;
import worthsaving.quantity.Distance;
import worthsaving.quantity.Money;

/**
 * What is taken for granted where a table says nothing.
 *
 * @param today the day of reading: rows without a date were seen on it, and no model year lies beyond the next
 * @param currency of prices without a currency
 * @param odometerUnit of odometers without a unit
 */
public record IntakeSettings(LocalDate today, Currency currency, Distance.Unit odometerUnit) {

    public IntakeSettings {
        Objects.requireNonNull(today, "today");
        Objects.requireNonNull(currency, "currency");
        Objects.requireNonNull(odometerUnit, "odometerUnit");
    }

    /** US dollars and miles. */
    public static IntakeSettings american(LocalDate today) {
        return new IntakeSettings(today, Money.USD, Distance.Unit.MILES);
    }
}
