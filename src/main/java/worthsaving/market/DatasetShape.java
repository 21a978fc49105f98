package worthsaving.market;

import java.io.IOException;
import java.io.Reader;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Currency;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Properties;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import worthsaving.quantity.Distance;

/**
 * How a price table is to be read: market, currency, units, and which column holds which field.
 * Kept as a properties file, one per table, so that a new table needs no code.
 *
 * @param market short name, such as {@code US}
 * @param columns header of the column for each field, or several with " + " between them whose words are joined, such
 *     as model and trim; columns not named are ignored
 * @param features header of each further column that may bear on the price, such as colour or doors, by the name it goes
 *     by; its cells are taken as words
 * @param indicators for a field spread over 0/1 columns, the word that each header stands for
 * @param words for each field of words, how the table's words translate into ours
 * @param fixedDate day of the adverts where the table has no date column, else null
 * @param fixedYear model year of all cars where the table has no year column, else NaN
 */
public record DatasetShape(
        String name,
        String market,
        Currency currency,
        Distance.Unit odometerUnit,
        PriceKind priceKind,
        Map<Field, String> columns,
        SortedMap<String, String> features,
        Map<Field, Map<String, String>> indicators,
        Map<Field, Map<String, String>> words,
        LocalDate fixedDate,
        double fixedYear,
        String source,
        String licence) {

    private static final Set<String> MAPPINGS = Set.of("column", "indicator", "word");

    public DatasetShape {
        columns = Map.copyOf(columns);
        features = Collections.unmodifiableSortedMap(new TreeMap<>(features));
        indicators = Map.copyOf(indicators);
        words = Map.copyOf(words);
        if (!columns.containsKey(Field.PRICE)) {
            throw new IllegalArgumentException(name + ": no column is named for the price");
        }
        if (fixedDate == null && !columns.containsKey(Field.DATE)) {
            throw new IllegalArgumentException(name + ": name a date column, or give one date for all rows");
        }
    }

    /**
     * Reads a mapping. Keys: name, market, currency, odometer-unit (miles or kilometres), price-kind, source,
     * licence, date, year, {@code column.FIELD = header}, {@code feature.NAME = header}, {@code indicator.FIELD.HEADER = word},
     * {@code word.FIELD.THEIRS = ours}.
     *
     * @param origin named in messages
     * @throws IllegalArgumentException listing every fault of the mapping
     */
    public static DatasetShape read(Reader reader, String origin) throws IOException {
        Properties text = new Properties();
        text.load(reader);
        List<String> faults = new ArrayList<>();
        Map<Field, String> columns = new EnumMap<>(Field.class);
        SortedMap<String, String> features = new TreeMap<>();
        Map<Field, Map<String, String>> words = new EnumMap<>(Field.class);
        Map<Field, Map<String, String>> indicators = new EnumMap<>(Field.class);
        for (String key : text.stringPropertyNames()) {
            String[] parts = key.split("\\.", 3);
            if (parts[0].equals("feature") && parts.length > 1) {
                features.put(key.substring(key.indexOf('.') + 1), text.getProperty(key).strip());
            }
            if (!MAPPINGS.contains(parts[0])) {
                continue;
            }
            Field field = parts.length > 1 ? Field.ofKey(parts[1]) : null;
            if (field == null) {
                faults.add("'" + key + "' names no known field");
            } else if (parts[0].equals("column")) {
                columns.put(field, text.getProperty(key).strip());
            } else if (parts[0].equals("indicator") && parts.length == 3) {
                indicators.computeIfAbsent(field, f -> new TreeMap<>())
                        .put(parts[2], text.getProperty(key).strip());
            } else if (parts.length == 3) {
                words.computeIfAbsent(field, f -> new TreeMap<>())
                        .put(parts[2].toLowerCase(Locale.ROOT).strip(), text.getProperty(key).strip());
            }
        }
        for (String key : List.of("name", "market", "currency", "odometer-unit", "price-kind", "source", "licence")) {
            if (text.getProperty(key, "").isBlank()) {
                faults.add("'" + key + "' is missing");
            }
        }
        if (!faults.isEmpty()) {
            throw new IllegalArgumentException(origin + ": " + String.join("; ", faults));
        }
        try {
            return new DatasetShape(
                    text.getProperty("name"),
                    text.getProperty("market"),
                    Currency.getInstance(text.getProperty("currency").strip()),
                    Distance.Unit.valueOf(upper(text, "odometer-unit")),
                    PriceKind.valueOf(upper(text, "price-kind")),
                    columns,
                    features,
                    indicators,
                    words,
                    text.containsKey("date") ? LocalDate.parse(text.getProperty("date").strip()) : null,
                    Double.parseDouble(text.getProperty("year", "NaN")),
                    text.getProperty("source"),
                    text.getProperty("licence"));
        } catch (RuntimeException e) {
            throw new IllegalArgumentException(origin + ": " + e.getMessage(), e);
        }
    }

    private static String upper(Properties text, String key) {
        return text.getProperty(key).strip().toUpperCase(Locale.ROOT);
    }

    String translate(Field field, String word) {
        String lower = word.strip().toLowerCase(Locale.ROOT);
        return words.getOrDefault(field, Map.of()).getOrDefault(lower, lower);
    }
}
