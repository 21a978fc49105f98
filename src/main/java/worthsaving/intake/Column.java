package worthsaving.intake;

import java.util.Arrays;
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
 * @param why what it was taken by: its name, its content, or somebody's word
 */
record Column(
        Field field,
        int index,
        String header,
        Optional<Currency> currency,
        Optional<Distance.Unit> unit,
        boolean band,
        String why) {

    private static final Set<String> CURRENCY_CODES = Currency.getAvailableCurrencies().stream()
            .map(c -> c.getCurrencyCode().toLowerCase(Locale.ROOT))
            .collect(Collectors.toUnmodifiableSet());

    static final String BY_NAME = "its name";

    /** A column taken for a field whatever it is called; unit and currency still come from its name, if it has any. */
    static Column of(Field field, int index, String header, String why) {
        String name = Field.plain(header);
        return new Column(field, index, header,
                Arrays.stream(name.split("_")).filter(CURRENCY_CODES::contains).findFirst()
                        .map(c -> Currency.getInstance(c.toUpperCase(Locale.ROOT)))
                        .filter(c -> field == Field.PRICE || field == Field.QUOTE),
                unitIn(name).filter(u -> field == Field.ODOMETER), name.endsWith("_band"), why);
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
        Optional<Distance.Unit> unit = unit(last).or(() -> whole.flatMap(f -> unitIn(Field.plain(header))));
        Optional<Currency> currency = CURRENCY_CODES.contains(last)
                ? Optional.of(Currency.getInstance(last.toUpperCase(Locale.ROOT)))
                : Optional.empty();
        Optional<Field> field = whole;
        if (field.isEmpty() && (unit.isPresent() || currency.isPresent()) && name.contains("_")) {
            field = Field.named(name.substring(0, name.lastIndexOf('_')).replaceAll("_in$", ""))
                    .filter(f -> unit.isPresent()
                            ? f == Field.ODOMETER
                            : f == Field.PRICE || f == Field.QUOTE);
        }
        return field.map(f -> new Column(f, index, header,
                currency.filter(c -> f == Field.PRICE || f == Field.QUOTE),
                unit.filter(u -> f == Field.ODOMETER),
                band,
                BY_NAME));
    }

    /** A unit anywhere in a name: "km_stand", "kilometerstand", "mileage_in_km". */
    private static Optional<Distance.Unit> unitIn(String plainName) {
        return plainName.contains("kilomet") || plainName.equals("kmstand") || plainName.equals("laufleistung")
                ? Optional.of(Distance.Unit.KILOMETRES)
                : Arrays.stream(plainName.split("_")).map(Column::unit).flatMap(Optional::stream).findFirst();
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
