package worthsaving.market;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import org.apache.commons.csv.CSVRecord;

/** Finds the column of each field: as the user says, else by name, else by content that is unmistakable. */
final class ColumnFinder {

    private static final List<Field> NEEDED = List.of(Field.PRICE, Field.MAKE, Field.MODEL, Field.YEAR);
    private static final double HALF = 0.5;
    private static final double MOST = 0.9;

    final Map<Field, String> columns = new EnumMap<>(Field.class);
    final Map<Field, String> reasons = new EnumMap<>(Field.class);
    final List<String> notes = new ArrayList<>();
    final List<String> faults = new ArrayList<>();

    private final TableSample sample;
    private final Map<Field, Set<String>> known;

    /** @param known words that tell a column of makes or models */
    ColumnFinder(TableSample sample, Map<Field, Set<String>> known) {
        this.sample = sample;
        this.known = known;
    }

    void find(MatchWishes wishes, List<CSVRecord> names) {
        wished(wishes);
        named(names);
        byContent();
        for (Field field : NEEDED) {
            if (!columns.containsKey(field)) {
                faults.add("no column is known to hold the " + field.key() + "; say which one: --column "
                        + field.key() + "=HEADER");
            }
        }
        if (columns.get(Field.DATE) == null && wishes.date().isEmpty()) {
            faults.add("no column is known to hold the day of the price; say which one: --column date=HEADER, or give "
                    + "one day for all rows: --date 2025-11-01");
        }
        columns.values().stream().filter(h -> sample.header().stream().filter(h::equals).count() > 1).distinct()
                .forEach(h -> faults.add("two columns are called '" + h + "'; rename one"));
    }

    private void wished(MatchWishes wishes) {
        wishes.columns().forEach((key, header) -> {
            Field field = Field.ofKey(key);
            if (field == null) {
                faults.add("'" + key + "' is no field; --column knows " + EnumSet.allOf(Field.class).stream()
                        .map(Field::key).collect(Collectors.joining(", ")));
            } else if (!sample.header().contains(header)) {
                faults.add("there is no column '" + header + "' for the " + key);
            } else {
                take(field, header, "as you say");
            }
        });
    }

    private void take(Field field, String header, String why) {
        columns.put(field, header);
        reasons.put(field, why);
    }

    private void named(List<CSVRecord> names) {
        Map<Field, String> byName = ColumnMatch.of(sample.header(), names).columns();
        new TreeMap<>(byName).forEach((field, header) -> {
            if (columns.containsKey(field) || columns.containsValue(header)) {
                return;
            }
            String fit = sample.told(header, content(field)) + " fit";
            if (sample.share(header, content(field)) >= HALF || sample.cells(header).isEmpty()) {
                take(field, header, "its name" + (field.isNumber() || field == Field.DATE ? ", and " + fit : ""));
            } else {
                notes.add("'" + header + "' is called like a column of " + field.key() + ", but only " + fit + ": left out");
            }
        });
    }

    /** Needed columns that no name gives, where the content of just one column is unmistakable. */
    private void byContent() {
        for (Field field : List.of(Field.YEAR, Field.MAKE, Field.MODEL, Field.PRICE, Field.ODOMETER)) {
            if (columns.containsKey(field)) {
                continue;
            }
            double enough = field == Field.MODEL ? HALF : MOST;
            List<String> fit = sample.header().stream()
                    .filter(h -> !columns.containsValue(h) && sample.share(h, telling(field)) >= enough)
                    .toList();
            if (fit.size() == 1) {
                take(field, fit.get(0), "its content: " + sample.told(fit.get(0), telling(field)) + " are such");
            }
        }
    }

    private Predicate<String> content(Field field) {
        CellStyle style = new CellStyle(',', true, Map.of(), false);
        return switch (field) {
            case YEAR -> this::year;
            case DATE -> cell -> style.date(cell) != null || CellStyle.SLASHES.matcher(cell).matches();
            default -> field.isNumber() ? cell -> Double.isFinite(style.number(field, cell)) : cell -> true;
        };
    }

    private Predicate<String> telling(Field field) {
        return switch (field) {
            case YEAR -> this::year;
            case PRICE -> cell -> cell.matches("(?i).*([$\u20ac\u00a3]|\\b(usd|eur|gbp)\\b).*")
                    && content(Field.PRICE).test(cell);
            case ODOMETER -> cell -> cell.matches("(?i)[\\d.,' ]+ ?(mi|miles|km)")
                    && content(Field.ODOMETER).test(cell);
            default -> cell -> known.getOrDefault(field, Set.of()).contains(cell.toLowerCase(Locale.ROOT).strip());
        };
    }

    private boolean year(String cell) {
        return cell.matches("(19[5-9]|20[0-4])\\d(\\.0+)?");
    }
}
