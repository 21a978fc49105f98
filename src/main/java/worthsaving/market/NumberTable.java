package worthsaving.market;

import java.io.IOException;
import java.io.Reader;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;

/**
 * A table of numbers under a header, such as a price series; NaN for an empty cell.
 *
 * @param columns by header, in the order of the file
 * @param badRows cells that are no numbers; their rows are left out
 */
public record NumberTable(String name, Map<String, double[]> columns, List<BadRow> badRows) {

    public NumberTable {
        badRows = List.copyOf(badRows);
    }

    public static NumberTable read(Reader reader, String name) throws IOException {
        CSVFormat format = CSVFormat.RFC4180.builder().setHeader().setSkipHeaderRecord(true).setTrim(true).get();
        List<BadRow> badRows = new ArrayList<>();
        List<double[]> rows = new ArrayList<>();
        List<String> header;
        try (CSVParser parser = CSVParser.parse(reader, format)) {
            header = parser.getHeaderNames();
            for (CSVRecord csv : parser) {
                double[] row = numbers(csv, header, parser.getCurrentLineNumber(), badRows);
                if (row != null) {
                    rows.add(row);
                }
            }
        }
        Map<String, double[]> columns = new LinkedHashMap<>();
        for (int c = 0; c < header.size(); c++) {
            int column = c;
            columns.put(header.get(c), rows.stream().mapToDouble(r -> r[column]).toArray());
        }
        return new NumberTable(name, columns, badRows);
    }

    private static double[] numbers(CSVRecord csv, List<String> header, long line, List<BadRow> badRows) {
        double[] row = new double[header.size()];
        for (int c = 0; c < row.length; c++) {
            String text = c < csv.size() ? csv.get(c) : "";
            try {
                row[c] = text.isEmpty() ? Double.NaN : Double.parseDouble(text);
            } catch (NumberFormatException e) {
                badRows.add(new BadRow(line, header.get(c), text, "is not a number"));
                return null;
            }
        }
        return row;
    }

    /** @throws IllegalArgumentException when there is no such column */
    public double[] column(String header) {
        double[] column = columns.get(header);
        if (column == null) {
            throw new IllegalArgumentException(name + " has no column '" + header + "', but " + columns.keySet());
        }
        return column.clone();
    }

    public int size() {
        return columns.values().stream().mapToInt(c -> c.length).max().orElse(0);
    }

    /** Rows, and for each column what is missing, least, median and greatest, as Markdown. */
    public String quality() {
        StringBuilder out = new StringBuilder(String.format(
                Locale.ROOT, "%s: %,d rows, %,d unreadable.\n\n| column | not stated | least | median | greatest |\n"
                        + "|---|---|---|---|---|\n", name, size(), badRows.size()));
        columns.forEach((header, values) -> {
            double[] stated = Arrays.stream(values).filter(v -> !Double.isNaN(v)).sorted().toArray();
            out.append(stated.length == 0
                    ? String.format(Locale.ROOT, "| %s | %d | | | |\n", header, values.length)
                    : String.format(Locale.ROOT, "| %s | %d | %s | %s | %s |\n", header, values.length - stated.length,
                            stated[0], stated[stated.length / 2], stated[stated.length - 1]));
        });
        return out.toString();
    }
}
