package worthsaving.market;

import java.io.IOException;
import java.io.Reader;
import java.io.StringReader;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.function.Predicate;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;

/** Header and first rows of a table, enough to tell what its columns hold. */
record TableSample(char separator, List<String> header, List<List<String>> rows) {

    private static final int CHARACTERS = 400_000;
    private static final int ROWS = 2000;
    private static final char[] SEPARATORS = {',', ';', '\t', '|'};

    /** @throws IllegalArgumentException when there is no header with two columns, or no row under it */
    static TableSample read(Reader reader) throws IOException {
        String text = head(reader);
        char separator = separator(text);
        List<List<String>> rows = new ArrayList<>();
        List<String> header;
        CellStyle style = new CellStyle(separator, true, Map.of(), false);
        try (CSVParser parser = CSVParser.parse(new StringReader(text), PriceTableReader.format(style))) {
            header = parser.getHeaderNames();
            for (CSVRecord row : parser) {
                if (rows.size() == ROWS) {
                    break;
                }
                rows.add(List.of(row.values()));
            }
        } catch (UncheckedIOException e) {
            throw new IllegalArgumentException("it cannot be split into cells: " + e.getCause().getMessage(), e);
        }
        if (header.size() < 2 || rows.isEmpty()) {
            throw new IllegalArgumentException("it needs a header with the names of at least two columns, parted by comma, "
                    + "semicolon, tab or bar, and rows under it");
        }
        return new TableSample(separator, header, rows);
    }

    /** The first characters; a last line that may be cut off is left out. */
    private static String head(Reader reader) throws IOException {
        char[] text = new char[CHARACTERS];
        int length = 0;
        for (int n = reader.read(text); n > 0; n = reader.read(text, length, CHARACTERS - length)) {
            length += n;
        }
        String all = new String(text, 0, length);
        return length < CHARACTERS ? all : all.substring(0, all.lastIndexOf('\n') + 1);
    }

    private static char separator(String text) {
        String header = text.lines().filter(l -> !l.isBlank() && !l.startsWith("#")).findFirst().orElse("");
        char best = ',';
        for (char c : SEPARATORS) {
            if (count(header, c) > count(header, best)) {
                best = c;
            }
        }
        return best;
    }

    private static long count(String text, char c) {
        return text.chars().filter(x -> x == c).count();
    }

    /** The cells of a column that are not empty. */
    List<String> cells(String column) {
        int index = header.indexOf(column);
        return rows.stream()
                .filter(r -> index >= 0 && index < r.size() && !r.get(index).isBlank())
                .map(r -> r.get(index))
                .toList();
    }

    /** Share of a column's stated cells that pass a test; 0 when none is stated. */
    double share(String column, Predicate<String> test) {
        List<String> cells = cells(column);
        return cells.isEmpty() ? 0 : (double) cells.stream().filter(test).count() / cells.size();
    }

    /** Such as "198 of 200 cells". */
    String told(String column, Predicate<String> test) {
        List<String> cells = cells(column);
        return cells.stream().filter(test).count() + " of " + cells.size() + " cells";
    }
}
