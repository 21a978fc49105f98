package worthsaving.catalog;

import java.util.Comparator;

/**
 * One thing wrong in the catalogue files.
 *
 * @param line line in the file, counted from 1; 0 when the file as a whole is meant
 * @param column name of the column, blank when the whole line is meant
 * @param message what is wrong and what would mend it
 */
public record CatalogueFault(String file, long line, String column, String message)
        implements Comparable<CatalogueFault> {

    private static final Comparator<CatalogueFault> BY_PLACE = Comparator.comparing(CatalogueFault::file)
            .thenComparingLong(CatalogueFault::line)
            .thenComparing(CatalogueFault::column)
            .thenComparing(CatalogueFault::message);

    @Override
    public int compareTo(CatalogueFault other) {
        return BY_PLACE.compare(this, other);
    }

    /** Such as {@code "items.csv, line 12, column shape: ..."}. */
    @Override
    public String toString() {
        return file + (line > 0 ? ", line " + line : "") + (column.isBlank() ? "" : ", column " + column) + ": "
                + message;
    }
}
