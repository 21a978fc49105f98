package worthsaving.deal;

import java.io.IOException;
import java.io.Reader;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Currency;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;
import worthsaving.quantity.Money;
import worthsaving.quantity.Range;
import worthsaving.quantity.Source;

/** Reads the table of places; good rows are kept, bad ones named with row, column and mend. */
public final class PlaceReader {

    private static final CSVFormat FORMAT = CSVFormat.DEFAULT.builder()
            .setHeader().setSkipHeaderRecord(true).setCommentMarker('#').setIgnoreSurroundingSpaces(true)
            .setIgnoreEmptyLines(true).get();
    private static final List<String> COLUMNS =
            List.of("place", "name", "term", "low", "mode", "high", "label", "source");

    private final String file;
    private final Map<String, String> names = new LinkedHashMap<>();
    private final Map<String, Currency> currencies = new HashMap<>();
    private final Map<String, Map<Term, Place.Figure>> figures = new LinkedHashMap<>();
    private final List<String> faults = new ArrayList<>();

    private PlaceReader(String file) {
        this.file = file;
    }

    /** @param faults one for each row left out, ready to be shown */
    public record Reading(List<Place> places, List<String> faults) {
        public Reading {
            places = List.copyOf(places);
            faults = List.copyOf(faults);
        }
    }

    /**
     * @param file name for messages
     * @throws IOException when the reader fails
     */
    public static Reading read(String file, Reader reader) throws IOException {
        PlaceReader places = new PlaceReader(file);
        try (CSVParser parser = FORMAT.parse(reader)) {
            List<String> missing = new ArrayList<>(COLUMNS);
            missing.removeAll(parser.getHeaderNames());
            if (!missing.isEmpty()) {
                return new Reading(List.of(), List.of(file + ": the first row must name the columns "
                        + String.join(", ", COLUMNS) + "; missing: " + String.join(", ", missing)));
            }
            for (CSVRecord row : parser) {
                places.row(row, parser.getCurrentLineNumber());
            }
        }
        return new Reading(places.figures.entrySet().stream()
                .map(e -> new Place(
                        e.getKey(), places.names.get(e.getKey()), places.currencies.get(e.getKey()), e.getValue()))
                        .toList(), places.faults);
    }

    private void row(CSVRecord row, long line) {
        if (!row.isConsistent()) {
            faults.add(at(line, "") + "has " + row.size() + " cells instead of " + COLUMNS.size());
            return;
        }
        Optional<Term> term = Term.ofId(row.get("term"));
        if (term.isEmpty()) {
            faults.add(at(line, "term") + "'" + row.get("term") + "' is no term of a deal; use one such as sales_tax");
            return;
        }
        try {
            Range range = new Range(number(row, "low"), number(row, "mode"), number(row, "high"));
            Optional<String> fault = term.get().fault(range);
            if (fault.isPresent()) {
                throw new IllegalArgumentException(fault.get());
            }
            Source.Label label = label(row.get("label"));
            Currency currency = currency(row);
            if (!currency.equals(currencies.getOrDefault(row.get("place"), currency))) {
                throw new IllegalArgumentException("column currency: place '" + row.get("place") + "' has two currencies");
            }
            currencies.put(row.get("place"), currency);
            names.putIfAbsent(row.get("place"), row.get("name"));
            figures.computeIfAbsent(row.get("place"), p -> new EnumMap<>(Term.class))
                    .put(term.get(), new Place.Figure(range, new Source(label, row.get("source"))));
        } catch (IllegalArgumentException e) {
            faults.add(at(line, "") + e.getMessage());
        }
    }

    private static Source.Label label(String text) {
        for (Source.Label label : Source.Label.values()) {
            if (label.name().equalsIgnoreCase(text)) {
                return label;
            }
        }
        throw new IllegalArgumentException("column label: '" + text + "' must be one of "
                + Arrays.toString(Source.Label.values()).toLowerCase(Locale.ROOT));
    }

    /** US dollars where the table has no such column or the cell is blank. */
    private static Currency currency(CSVRecord row) {
        String code = row.isMapped("currency") ? row.get("currency") : "";
        try {
            return code.isEmpty() ? Money.USD : Currency.getInstance(code);
        } catch (IllegalArgumentException e) {
            throw new IllegalArgumentException("column currency: '" + code + "' is no code such as EUR", e);
        }
    }

    private static double number(CSVRecord row, String column) {
        try {
            return Double.parseDouble(row.get(column));
        } catch (NumberFormatException e) {
            throw new IllegalArgumentException(
                    "column " + column + ": '" + row.get(column) + "' is no number; write one such as 6.25", e);
        }
    }

    private String at(long line, String column) {
        return file + ", line " + line + (column.isEmpty() ? ": " : ", column " + column + ": ");
    }
}
