package worthsaving.report;

import java.io.IOException;

/**
 * Writes tab-separated values (IANA text/tab-separated-values), safe to open in a spreadsheet or to paste into one.
 * The format has no quotes and no way to write a tab or a line end: these become spaces. Text is neutralised
 * ({@link SpreadsheetText}); text that begins with a quote is too, because a spreadsheet takes the quotes off and
 * runs what is between them.
 */
public final class TsvWriter implements RowWriter {

    private final Appendable out;
    private final int width;

    /** Writes the header at once. */
    public TsvWriter(Appendable out, String... header) throws IOException {
        this.out = out;
        this.width = header.length;
        row((Object[]) header);
    }

    @Override
    public void row(Object... cells) throws IOException {
        if (cells.length != width) {
            throw new IllegalArgumentException("a row of " + width + " cells is needed, not " + cells.length);
        }
        for (int i = 0; i < width; i++) {
            out.append(i == 0 ? "" : "\t").append(written(cells[i]));
        }
        out.append('\n');
    }

    private static String written(Object cell) {
        if (cell == null) {
            return "";
        }
        if (cell instanceof Number number) {
            return PlainNumber.of(number).toString();
        }
        String neutral = SpreadsheetText.neutral(cell.toString());
        String safe = neutral.stripLeading().startsWith("\"") ? "'" + neutral : neutral;
        return safe.replaceAll("[\\p{Cntrl}\\u0085\\u2028\\u2029]", " ");
    }
}
