package worthsaving.desktop.book;

import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.Objects;
import java.util.Optional;
import worthsaving.quantity.Money;

/**
 * That a car was bought, as a setting of the casebook keeps it.
 *
 * @param day of buying
 * @param paid price paid for it
 */
public record Bought(LocalDate day, Money paid) {

    public Bought {
        Objects.requireNonNull(day, "day");
        Objects.requireNonNull(paid, "paid");
    }

    /** Name of the setting for a case. */
    public static String setting(String id) {
        return CarSettings.of(id) + "bought";
    }

    /** Such as {@code "2025-11-20 1800.0 USD"}. */
    public String text() {
        return day + " " + paid.amount() + " " + paid.currency().getCurrencyCode();
    }

    /** Empty when the text is none of {@link #text()}. */
    public static Optional<Bought> read(String text) {
        String[] parts = text.strip().split(" ");
        try {
            return parts.length != 3 ? Optional.empty()
                    : Optional.of(new Bought(LocalDate.parse(parts[0]), Money.of(Double.parseDouble(parts[1]), parts[2])));
        } catch (DateTimeException | IllegalArgumentException e) {
            return Optional.empty();
        }
    }
}
