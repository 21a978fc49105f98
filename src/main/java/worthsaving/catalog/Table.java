package worthsaving.catalog;

import java.io.IOException;
import java.io.PushbackReader;
import java.io.Reader;
import java.io.UncheckedIOException;
import java.nio.charset.CharacterCodingException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;
import org.apache.commons.csv.DuplicateHeaderMode;

/**
 * One file of the catalogue: comment lines, a header, rows.
 *
 * @param edition text after "edition" in the first comment, blank if there is none
 * @param rows the rows; none when the file is missing or lacks columns
 * @param whole false when rows are missing, so that ids may not be checked against this table
 */
record Table(String file, String edition, List<Row> rows, boolean whole) {

    /** Newest file format this program reads. */
    static final int FORMAT = 1;

    private static final Pattern FORMAT_LINE = Pattern.compile("format\\s+(\\d+)(?:\\s*,\\s*edition\\s+([^,\\s]+))?");
    private static final char BYTE_ORDER_MARK = '\uFEFF';
    static final CSVFormat CSV = CSVFormat.DEFAULT
            .builder()
            .setCommentMarker('#')
            .setHeader()
            .setSkipHeaderRecord(true)
            .setAllowMissingColumnNames(true)
            .setDuplicateHeaderMode(DuplicateHeaderMode.ALLOW_EMPTY)
            .setIgnoreEmptyLines(true)
            .setIgnoreSurroundingSpaces(true)
            .get();

    static Table read(String file, Function<String, ? extends Reader> open, List<String> columns, Faults faults) {
        try (Reader reader = open.apply(file)) {
            if (reader == null) {
                throw new IOException("no such file");
            }
            return parse(file, withoutMark(reader), columns, faults);
        } catch (IOException | UncheckedIOException e) {
            faults.add(file, 0, "", "cannot be read (" + why(e) + "); restore it from the shipped catalogue");
            return new Table(file, "", List.of(), false);
        }
    }

    private static String why(Exception failed) {
        Throwable cause = failed instanceof UncheckedIOException wrapped ? wrapped.getCause() : failed;
        return cause instanceof CharacterCodingException ? "it is not UTF-8 text" : cause.getMessage();
    }

    /** What each row says. */
    <T> List<T> map(Function<Row, T> read) {
        return rows.stream().map(read).toList();
    }

    private static Table parse(String file, Reader reader, List<String> columns, Faults faults) throws IOException {
        try (CSVParser parser = CSV.parse(reader)) {
            String edition = edition(file, Optional.ofNullable(parser.getHeaderComment()), faults);
            List<String> missing =
                    columns.stream().filter(c -> !parser.getHeaderNames().contains(c)).toList();
            if (!missing.isEmpty()) {
                faults.add(
                        file,
                        Math.max(1, parser.getCurrentLineNumber()),
                        missing.get(0),
                        "the header lacks " + String.join(", ", missing) + "; it must hold: "
                                + String.join(",", columns));
                return new Table(file, edition, List.of(), false);
            }
            List<Row> rows = new ArrayList<>();
            boolean whole = readRows(file, parser, rows, faults);
            return new Table(file, edition, List.copyOf(rows), whole);
        } catch (IllegalArgumentException e) {
            faults.add(file, 1, "", "the header cannot be read: " + e.getMessage());
            return new Table(file, "", List.of(), false);
        }
    }

    private static boolean readRows(String file, CSVParser parser, List<Row> rows, Faults faults) {
        int width = parser.getHeaderNames().size();
        try {
            for (CSVRecord cells : parser) {
                long line = parser.getCurrentLineNumber();
                if (cells.size() != width) {
                    faults.add(
                            file,
                            line,
                            "",
                            "this line has " + cells.size() + " cells, the header " + width
                                    + "; quote cells that hold a comma");
                }
                rows.add(new Row(file, line, cells, faults));
            }
            return true;
        } catch (UncheckedIOException e) {
            faults.add(
                    file,
                    parser.getCurrentLineNumber(),
                    "",
                    "the file cannot be read on from here; look for a quotation mark without its partner");
            return false;
        }
    }

    private static String edition(String file, Optional<String> comment, Faults faults) {
        Matcher line = FORMAT_LINE.matcher(comment.orElse(""));
        if (!line.find()) {
            faults.add(file, 1, "", "the first line must name the file format, such as '# format 1, edition 2026.1'");
            return "";
        }
        if (line.group(1).length() > 4 || Integer.parseInt(line.group(1)) > FORMAT) {
            faults.add(
                    file,
                    1,
                    "",
                    "format " + line.group(1) + " is newer than this program, which reads up to format " + FORMAT
                            + "; update the program");
        }
        return line.group(2) == null ? "" : line.group(2);
    }

    private static Reader withoutMark(Reader reader) throws IOException {
        PushbackReader pushback = new PushbackReader(reader);
        int first = pushback.read();
        if (first >= 0 && first != BYTE_ORDER_MARK) {
            pushback.unread(first);
        }
        return pushback;
    }
}
