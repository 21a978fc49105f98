package worthsaving.intake.advert;

import java.io.IOException;
import java.io.Reader;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.function.Consumer;
import java.util.function.Function;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;

/** Reads the commented CSV files of the vocabulary and gathers faults instead of stopping at the first. */
final class CsvRows {

    private static final CSVFormat FORMAT = CSVFormat.DEFAULT.builder()
            .setHeader().setSkipHeaderRecord(true).setCommentMarker('#').setTrim(true).setIgnoreEmptyLines(true).get();

    private final Function<String, Reader> files;
    private final List<String> faults = new ArrayList<>();

    CsvRows(Function<String, Reader> files) {
        this.files = files;
    }

    /** One line of a file. */
    record Row(String file, long line, Map<String, String> cells) {

        String get(String column) {
            return cells.getOrDefault(column, "");
        }

        /** The parts of a cell that separates several things by semicolons. */
        List<String> list(String column) {
            List<String> parts = new ArrayList<>();
            for (String part : get(column).split(";")) {
                if (!part.isBlank()) {
                    parts.add(part.strip());
                }
            }
            return parts;
        }

        boolean yes(String column) {
            String value = get(column);
            if (!value.isEmpty() && !value.equals("yes") && !value.equals("no")) {
                throw new IllegalArgumentException("column " + column + " holds '" + value + "'; write yes or no");
            }
            return value.equals("yes");
        }
    }

    /** Hands every row to {@code use}; whatever that throws as IllegalArgumentException becomes a fault of the row. */
    void read(String file, List<String> columns, Consumer<Row> use) {
        Reader reader = files.apply(file);
        if (reader == null) {
            faults.add(file + ": the file is missing");
            return;
        }
        try (CSVParser parser = FORMAT.parse(reader)) {
            List<String> missing = new ArrayList<>(columns);
            missing.removeAll(parser.getHeaderNames());
            if (!missing.isEmpty()) {
                faults.add(file + ", line " + parser.getCurrentLineNumber() + ": no column " + String.join(", ",
                        missing)
                        + "; the first line that is no comment must name " + String.join(",", columns));
                return;
            }
            for (CSVRecord record : parser) {
                row(new Row(file, parser.getCurrentLineNumber(), record.toMap()), record, use);
            }
        } catch (IOException | java.io.UncheckedIOException | IllegalStateException e) {
            faults.add(file + ": " + e.getMessage());
        }
    }

    private void row(Row row, CSVRecord record, Consumer<Row> use) {
        if (!record.isConsistent()) {
            fault(row, "has " + record.size() + " cells, the header has another number; quote cells that hold commas");
            return;
        }
        try {
            use.accept(row);
        } catch (IllegalArgumentException e) {
            fault(row, e.getMessage());
        }
    }

    void fault(Row row, String what) {
        faults.add(row.file() + ", line " + row.line() + ": " + what);
    }

    void fault(String what) {
        faults.add(what);
    }

    List<String> faults() {
        return List.copyOf(faults);
    }
}
