package worthsaving.intake;

import java.util.List;

/** Takes a table row by row, in the order of the file, so that its size does not matter. */
public interface LotSink {

    /** The header line as written, once, before any row. */
    default void header(String text) {}

    /** The cells of the header, once, after {@link #header}. */
    default void columns(List<String> names) {}

    void good(LotEntry entry);

    void refused(RefusedRow row);

    /** A fault that costs no row, or one of the whole file. */
    void warning(IntakeFault fault);

    /**
     * Called every thousand rows or so.
     *
     * @param rows rows read
     * @param characters characters read
     * @return false to stop reading
     */
    default boolean goOn(long rows, long characters) {
        return true;
    }
}
