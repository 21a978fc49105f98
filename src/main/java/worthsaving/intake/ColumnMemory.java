package worthsaving.intake;

import java.io.IOException;
import java.io.Reader;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;

/**
 * What the user has told of the columns of earlier tables, by the header they had. A small CSV that people can read and
 * change: the header, the field and the column taken for it ("-" for one to be left alone).
 */
public final class ColumnMemory {

    /** Sources beyond this many: the oldest is forgotten. */
    static final int MOST = 200;

    /** Name of the column that is added to rows given back for mending. */
    public static final String REASON = "reason";

    private static final String IGNORED = "-";
    private static final String BETWEEN = " | ";
    private static final CSVFormat FORMAT = CSVFormat.RFC4180.builder()
            .setHeader("header", "field", "column").setSkipHeaderRecord(true).setRecordSeparator('\n').get();

    private final Map<String, ColumnChoice> byHeader;

    private ColumnMemory(Map<String, ColumnChoice> byHeader) {
        this.byHeader = byHeader;
    }

    public static ColumnMemory empty() {
        return new ColumnMemory(Map.of());
    }

    /**
     * Reads what {@link #write} wrote; lines that make no sense are passed over.
     *
     * @param in left open
     */
    public static ColumnMemory read(Reader in) throws IOException {
        Map<String, Map<String, String>> fields = new LinkedHashMap<>();
        Map<String, List<String>> ignored = new LinkedHashMap<>();
        try {
            for (CSVRecord record : CSVParser.parse(in, FORMAT)) {
                if (record.size() != 3) {
                    continue;
                }
                fields.computeIfAbsent(record.get(0), k -> new LinkedHashMap<>());
                ignored.computeIfAbsent(record.get(0), k -> new ArrayList<>());
                if (record.get(1).equals(IGNORED)) {
                    ignored.get(record.get(0)).add(record.get(2));
                } else {
                    fields.get(record.get(0)).put(record.get(1), record.get(2));
                }
            }
        } catch (java.io.UncheckedIOException | IllegalStateException e) {
            throw new IOException("the memory of columns cannot be read: " + e.getMessage(), e);
        }
        Map<String, ColumnChoice> byHeader = new LinkedHashMap<>();
        fields.forEach((header, told) -> byHeader.put(header, new ColumnChoice(told, ignored.get(header),
                "remembered of an earlier table with this header")));
        return new ColumnMemory(byHeader);
    }

    /** What was told of a table with this header. */
    public Optional<ColumnChoice> of(List<String> header) {
        return Optional.ofNullable(byHeader.get(fingerprint(header)));
    }

    /** With the choice remembered in place of what was told before. */
    public ColumnMemory with(List<String> header, ColumnChoice choice) {
        Map<String, ColumnChoice> more = new LinkedHashMap<>(byHeader);
        more.remove(fingerprint(header));
        more.put(fingerprint(header), choice);
        while (more.size() > MOST) {
            more.remove(more.keySet().iterator().next());
        }
        return new ColumnMemory(more);
    }

    public void write(Appendable out) throws IOException {
        FORMAT.printRecord(out, "header", "field", "column");
        for (Map.Entry<String, ColumnChoice> entry : byHeader.entrySet()) {
            for (Map.Entry<String, String> field : new java.util.TreeMap<>(entry.getValue().headersByField())
                    .entrySet()) {
                FORMAT.printRecord(out, entry.getKey(), field.getKey(), field.getValue());
            }
            for (String ignored : entry.getValue().ignored()) {
                FORMAT.printRecord(out, entry.getKey(), IGNORED, ignored);
            }
        }
    }

    /**
     * The same for every table of one source: its column names, whatever their case and spacing, without the column
     * of reasons that rows given back for mending have.
     */
    static String fingerprint(List<String> header) {
        return String.join(BETWEEN, header.stream().map(Field::plain).filter(name -> !name.equals(REASON)).toList());
    }
}
