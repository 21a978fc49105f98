package worthsaving.report;

import java.io.IOException;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.QuoteMode;

/**
 * Writes CSV (RFC 4180, comma, line feed) that is safe to open in a spreadsheet: text is quoted and
 * neutralised ({@link SpreadsheetText}), numbers are written plainly and unchanged.
 */
public final class CsvWriter implements RowWriter {

    private static final CSVFormat FORMAT = CSVFormat.RFC4180.builder()
            .setQuoteMode(QuoteMode.NON_NUMERIC)
            .setRecordSeparator('\n')
            .get();

    private final Appendable out;
    private final int width;

    /** Writes the header at once. */
    public CsvWriter(Appendable out, String... header) throws IOException {
        this.out = out;
        this.width = header.length;
        row((Object[]) header);
    }

    @Override
    public void row(Object... cells) throws IOException {
        if (cells.length != width) {
            throw new IllegalArgumentException("a row of " + width + " cells is needed, not " + cells.length);
        }
        Object[] written = new Object[width];
        for (int i = 0; i < width; i++) {
            written[i] = written(cells[i]);
        }
        FORMAT.printRecord(out, written);
    }

    private static Object written(Object cell) {
        if (cell == null) {
            return null;
        }
        return cell instanceof Number number ? PlainNumber.of(number) : SpreadsheetText.neutral(cell.toString());
    }
}
