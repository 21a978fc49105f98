package worthsaving.market;

import java.io.IOException;
import java.io.Reader;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;

/**
 * Guesses, by name, which column of the user's own table holds which field. The guess is to be shown and
 * may be overruled before anything is read.
 *
 * @param columns header for each field found
 * @param ignored headers that match no field
 */
public record ColumnMatch(Map<Field, String> columns, List<String> ignored) {

    public ColumnMatch {
        columns = Map.copyOf(columns);
        ignored = List.copyOf(ignored);
    }

    /**
     * @param names CSV with the header field,header: known names of each field, best first
     */
    public static ColumnMatch of(List<String> header, Reader names) throws IOException {
        return of(header, readNames(names));
    }

    /** As {@link #of(List, Reader)}, with the names read already. */
    static ColumnMatch of(List<String> header, List<CSVRecord> names) {
        Map<String, Field> known = fields(names);
        Map<Field, String> columns = new EnumMap<>(Field.class);
        List<String> ignored = new ArrayList<>();
        for (String column : header) {
            Field field = known.get(plain(column));
            if (field == null || columns.putIfAbsent(field, column) != null) {
                ignored.add(column);
            }
        }
        return new ColumnMatch(columns, ignored);
    }

    private static List<CSVRecord> readNames(Reader names) throws IOException {
        CSVFormat format = CSVFormat.RFC4180.builder().setHeader().setSkipHeaderRecord(true).get();
        try (CSVParser parser = CSVParser.parse(names, format)) {
            return parser.getRecords();
        }
    }

    private static Map<String, Field> fields(List<CSVRecord> names) {
        Map<String, Field> known = new HashMap<>();
        for (CSVRecord row : names) {
            Field field = Field.ofKey(row.get("field"));
            if (field == null) {
                throw new IllegalArgumentException("column names, row " + row.getRecordNumber()
                        + ": no field is called '" + row.get("field") + "'");
            }
            known.put(plain(row.get("header")), field);
        }
        return known;
    }

    /** Lower case, without unit suffixes and punctuation: "Odometer_mi" and "odometer" are one name. */
    private static String plain(String name) {
        return name.toLowerCase(Locale.ROOT)
                .replaceAll("[^a-z]+", " ")
                .strip()
                .replaceAll(" (usd|eur|euro|gbp|mi|miles|km|l|kilometres|kilometers|ps|hp|kw|cc|ccm|cm)$", "");
    }
}
