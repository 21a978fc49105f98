package worthsaving.intake;

import java.util.Objects;

/**
 * One thing that is wrong with a table of listings.
 *
 * @param source name of the file
 * @param row line of the file on which the row starts, the first line being 1; 0 for the file as a whole
 * @param column name of the column as the file spells it; blank for the whole row
 * @param what what is wrong, in plain words
 * @param mend what would put it right
 */
public record IntakeFault(String source, long row, String column, Effect effect, String what, String mend) {

    /** What became of the row. */
    public enum Effect {
        /** Nothing could be read. */
        FILE_REFUSED,
        /** The row is left out and listed. */
        ROW_REFUSED,
        /** The row is kept; a field of it may have stayed unknown. */
        WARNING
    }

    public IntakeFault {
        Objects.requireNonNull(source, "source");
        Objects.requireNonNull(column, "column");
        Objects.requireNonNull(effect, "effect");
        Objects.requireNonNull(what, "what");
        Objects.requireNonNull(mend, "mend");
    }

    /** Where it is, such as {@code "lot.csv, row 7, column price"}. */
    public String place() {
        return source + (row > 0 ? ", row " + row : "") + (column.isEmpty() ? "" : ", column " + column);
    }

    @Override
    public String toString() {
        return place() + ": " + what + "; " + mend;
    }
}
