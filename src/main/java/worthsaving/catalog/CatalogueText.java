package worthsaving.catalog;

import java.io.IOException;
import java.io.StringReader;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;

/**
 * The catalogue files as they stand, cell by cell, so that one figure can be changed and nothing else: remarks, order
 * and every other line keep their bytes.
 *
 * @param files text by file name, one for each of {@link CatalogueReader#FILES}
 */
public record CatalogueText(Map<String, String> files) {

    /**
     * One row of a file.
     *
     * @param line line in the file, counted from 1; the last one where a cell holds a line break
     * @param cells by column, in the order of the header; a missing cell is blank
     */
    public record Line(String file, long line, Map<String, String> cells) {

        public Line {
            cells = Collections.unmodifiableMap(new LinkedHashMap<>(cells));
        }

        /** Blank for a column that the file does not have. */
        public String cell(String column) {
            return cells.getOrDefault(column, "");
        }
    }

    public CatalogueText {
        files = Map.copyOf(files);
        for (String file : CatalogueReader.FILES) {
            Objects.requireNonNull(files.get(file), () -> "no text of " + file);
        }
    }

    /** Checked as a whole. */
    public CatalogueReading read() {
        return CatalogueReader.read(name -> new StringReader(files.get(name)));
    }

    /**
     * The rows of a file that can be read as such; a fault in the text ends the list early, and {@link #read} tells
     * of it.
     *
     * @throws IllegalArgumentException for a file that the catalogue does not have
     */
    public List<Line> lines(String file) {
        String text = text(file);
        List<Line> lines = new ArrayList<>();
        try (CSVParser parser = Table.CSV.parse(new StringReader(text))) {
            for (CSVRecord row : parser) {
                Map<String, String> cells = new LinkedHashMap<>();
                for (String column : parser.getHeaderNames()) {
                    cells.put(column, row.isSet(column) ? row.get(column).strip() : "");
                }
                lines.add(new Line(file, parser.getCurrentLineNumber(), cells));
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        } catch (UncheckedIOException | IllegalArgumentException e) {
            return lines;
        }
        return lines;
    }

    /**
     * With one cell changed.
     *
     * @throws IllegalArgumentException when the line or column is not there, or the line spans several
     */
    public CatalogueText with(String file, long line, String column, String value) {
        Line row = lines(file).stream().filter(l -> l.line() == line).findFirst()
                .filter(l -> l.cells().containsKey(column))
                .orElseThrow(() -> new IllegalArgumentException(
                        file + " has no cell in line " + line + ", column " + column));
        Map<String, String> cells = new LinkedHashMap<>(row.cells());
        cells.put(column, value.strip());
        List<String> all = new ArrayList<>(List.of(text(file).split("\n", -1)));
        String before = all.get((int) line - 1);
        if (parsed(before).filter(c -> c.size() >= row.cells().size()).isEmpty()) {
            throw new IllegalArgumentException(file + ", line " + line
                    + " cannot be changed here, since a cell holds a line break; change it in an editor");
        }
        String end = before.endsWith("\r") ? "\r" : "";
        all.set((int) line - 1, CSVFormat.DEFAULT.format(cells.values().toArray()) + end);
        Map<String, String> changed = new LinkedHashMap<>(files);
        changed.put(file, String.join("\n", all));
        return new CatalogueText(changed);
    }

    private static Optional<CSVRecord> parsed(String line) {
        try (CSVParser parser = CSVFormat.DEFAULT.parse(new StringReader(line))) {
            return parser.stream().findFirst();
        } catch (IOException | UncheckedIOException e) {
            return Optional.empty();
        }
    }

    private String text(String file) {
        String text = files.get(file);
        if (text == null) {
            throw new IllegalArgumentException("the catalogue has no file " + file);
        }
        return text;
    }
}
