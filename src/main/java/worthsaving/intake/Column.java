package worthsaving.intake;

import java.util.Currency;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import worthsaving.quantity.Distance;

/**
 * One column of a table, matched to a field.
 *
 * @param index position in the row, from 0
 * @param header the name as the file spells it
 * @param currency of the money in it, when the name says so
 * @param unit of the distances in it, when the name says so
 * @param band true when it holds classes rather than readings
 */
record Column(
        Field field,
        int index,
        String header,
        Optional<Currency> currency,
        Optional<Distance.Unit> unit,
        boolean band) {

    private static final Set<String> CURRENCY_CODES = Currency.getAvailableCurrencies().stream()
            .map(c -> c.getCurrencyCode().toLowerCase(Locale.ROOT))
            .collect(Collectors.toUnmodifiableSet());

    static Column of(Field field, int index, String header) {
        return new Column(field, index, header, Optional.empty(), Optional.empty(), false);
    }

    /** Matches a column by its name, with a unit, currency or "band" at the end of it. */
    static Optional<Column> named(String header, int index) {
        String name = Field.plain(header);
        boolean band = name.endsWith("_band");
        if (band) {
            name = name.substring(0, name.length() - "_band".length());
        }
        Optional<Field> whole = Field.named(name);
        String last = name.substring(name.lastIndexOf('_') + 1);
        Optional<Distance.Unit> unit = unit(last);
        Optional<Currency> currency = CURRENCY_CODES.contains(last)
                ? Optional.of(Currency.getInstance(last.toUpperCase(Locale.ROOT)))
                : Optional.empty();
        Optional<Field> field = whole;
        if (field.isEmpty() && (unit.isPresent() || currency.isPresent()) && name.contains("_")) {
            field = Field.named(name.substring(0, name.lastIndexOf('_')))
                    .filter(f -> unit.isPresent()
                            ? f == Field.ODOMETER
                            : f == Field.PRICE || f == Field.QUOTE);
        }
        return field.map(f -> new Column(f, index, header,
                currency.filter(c -> f == Field.PRICE || f == Field.QUOTE),
                unit.filter(u -> f == Field.ODOMETER),
                band));
    }

    static Optional<Distance.Unit> unit(String word) {
        return switch (word.toLowerCase(Locale.ROOT)) {
            case "mi", "mile", "miles", "mls" -> Optional.of(Distance.Unit.MILES);
            case "km", "kms", "kilometre", "kilometres", "kilometer", "kilometers" ->
                    Optional.of(Distance.Unit.KILOMETRES);
            default -> Optional.empty();
        };
    }
}
