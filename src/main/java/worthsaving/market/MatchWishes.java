package worthsaving.market;

import java.time.LocalDate;
import java.util.Currency;
import java.util.Map;
import java.util.Optional;
import worthsaving.quantity.Distance;

/**
 * What the user says about his own table; it goes before all guessing.
 *
 * @param name of the table, for messages and the model's card
 * @param columns header of a field's column, by the field's key, such as price = Asking
 * @param date day of all prices, for a table without a date column
 * @param kind whether prices were asked or paid; by the name of the price column when not said
 * @param market code of the market; by the currency when not said
 */
public record MatchWishes(
        String name,
        Map<String, String> columns,
        Optional<Currency> currency,
        Optional<Distance.Unit> unit,
        Optional<LocalDate> date,
        Optional<PriceKind> kind,
        Optional<String> market) {

    public MatchWishes {
        columns = Map.copyOf(columns);
    }

    /** Nothing said: all is found out. */
    public static MatchWishes none(String name) {
        return new MatchWishes(name, Map.of(), Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty(),
                Optional.empty());
    }
}
