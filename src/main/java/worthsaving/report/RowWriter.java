package worthsaving.report;

import java.io.IOException;

/** Writes rows of cells under one header, safe to open in a spreadsheet. */
public interface RowWriter {

    /**
     * @param cells as many as the header has; numbers stay numbers, null is a blank cell, anything else is text
     */
    void row(Object... cells) throws IOException;

    /** Begins a table of some form. */
    @FunctionalInterface
    interface Maker {
        RowWriter of(String... header) throws IOException;
    }
}
