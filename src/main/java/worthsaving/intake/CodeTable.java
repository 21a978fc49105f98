package worthsaving.intake;

import java.io.IOException;
import java.io.Reader;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;

/**
 * What trouble codes are about, and the findings they stand for, as ranges of the numbering of SAE J2012 /
 * ISO 15031-6. A code of the maker's own stands for nothing here: its meaning differs from make to make.
 */
public final class CodeTable {

    /** Knows no code. */
    public static final CodeTable EMPTY = new CodeTable(List.of());

    /** Name of the file it is read from, in the folder of the vocabulary. */
    public static final String FILE = "trouble_codes.csv";

    private static final List<String> COLUMNS = List.of("first", "last", "finding", "meaning", "label");
    private static final CSVFormat FORMAT = CSVFormat.DEFAULT.builder()
            .setHeader().setSkipHeaderRecord(true).setCommentMarker('#').setTrim(true).setIgnoreEmptyLines(true).get();

    /**
     * One row of the table.
     *
     * @param finding id of the catalogue; empty where the catalogue asks nothing like it
     * @param label where the row comes from: published structure or common practice
     */
    public record Row(TroubleCode first, TroubleCode last, Optional<String> finding, String meaning, String label) {

        boolean holds(TroubleCode code) {
            return code.bytes() >= first.bytes() && code.bytes() <= last.bytes();
        }

        int width() {
            return last.bytes() - first.bytes();
        }
    }

    private final List<Row> rows;

    private CodeTable(List<Row> rows) {
        this.rows = rows.stream().sorted(Comparator.comparingInt(Row::width)).toList();
    }

    /**
     * Reads the table.
     *
     * @param in is closed
     * @throws IllegalArgumentException listing every fault with its line
     */
    public static CodeTable read(Reader in) {
        List<Row> rows = new ArrayList<>();
        List<String> faults = new ArrayList<>();
        try (CSVParser parser = FORMAT.parse(in)) {
            if (!parser.getHeaderNames().containsAll(COLUMNS)) {
                throw new IllegalArgumentException(FILE + ": the first line must name " + String.join(",", COLUMNS));
            }
            for (CSVRecord record : parser) {
                try {
                    rows.add(row(record));
                } catch (IllegalArgumentException e) {
                    faults.add(FILE + ", line " + parser.getCurrentLineNumber() + ": " + e.getMessage());
                }
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        } catch (UncheckedIOException | IllegalStateException e) {
            throw new IllegalArgumentException(FILE + ": " + e.getMessage(), e);
        }
        if (!faults.isEmpty()) {
            throw new IllegalArgumentException(String.join("\n", faults));
        }
        return new CodeTable(rows);
    }

    private static Row row(CSVRecord record) {
        if (!record.isConsistent()) {
            throw new IllegalArgumentException("the row has " + record.size() + " cells; quote cells that hold commas");
        }
        TroubleCode first = new TroubleCode(record.get("first"));
        TroubleCode last = record.get("last").isEmpty() ? first : new TroubleCode(record.get("last"));
        if (first.system() != last.system() || last.bytes() < first.bytes()) {
            throw new IllegalArgumentException(first + " to " + last + " is no range within one system");
        }
        return new Row(first, last, Optional.of(record.get("finding")).filter(f -> !f.isEmpty()),
                record.get("meaning"), record.get("label"));
    }

    /** The narrowest row that holds the code; empty for unlisted codes and for those the maker defines. */
    public Optional<Row> row(TroubleCode code) {
        return code.definedBy() == TroubleCode.DefinedBy.MAKER
                ? Optional.empty()
                : rows.stream().filter(row -> row.holds(code)).findFirst();
    }

    /** Findings that the table may name. */
    public Set<String> findings() {
        return rows.stream().flatMap(r -> r.finding().stream()).collect(Collectors.toCollection(TreeSet::new));
    }

    public List<Row> rows() {
        return rows;
    }
}
