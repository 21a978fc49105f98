package worthsaving.report;

import java.io.IOException;
import java.math.BigDecimal;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.QuoteMode;

/**
 * Writes CSV (RFC 4180, comma, line feed) that is safe to open in a spreadsheet: text is quoted and
 * neutralised ({@link SpreadsheetText}), numbers are written plainly and unchanged.
 */
public final class CsvWriter {

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

    /**
     * @param cells as many as the header has; numbers stay numbers, null is a blank cell, anything else is text
     */
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
        if (cell instanceof Double d) {
            if (!Double.isFinite(d)) {
                throw new IllegalArgumentException("a cell cannot hold the number " + d);
            }
            return new PlainNumber(BigDecimal.valueOf(d));
        }
        return cell instanceof Number ? cell : SpreadsheetText.neutral(cell.toString());
    }

    /** A number that prints without an exponent and without zeros after the point. */
    private static final class PlainNumber extends Number {
        private final transient BigDecimal value;

        private PlainNumber(BigDecimal value) {
            this.value = value;
        }

        @Override
        public int intValue() {
            return value.intValue();
        }

        @Override
        public long longValue() {
            return value.longValue();
        }

        @Override
        public float floatValue() {
            return value.floatValue();
        }

        @Override
        public double doubleValue() {
            return value.doubleValue();
        }

        @Override
        public String toString() {
            return value.signum() == 0 ? "0" : value.stripTrailingZeros().toPlainString();
        }
    }
}
