package worthsaving.intake;

import java.util.Objects;

/**
 * What people have said of the columns of a table.
 *
 * @param memory of earlier tables
 * @param now for this table; outweighs what is remembered
 */
public record TableColumns(ColumnMemory memory, ColumnChoice now) {

    /** Nothing was said. */
    public static final TableColumns UNTOLD = new TableColumns(ColumnMemory.empty(), ColumnChoice.NONE);

    public TableColumns {
        Objects.requireNonNull(memory, "memory");
        Objects.requireNonNull(now, "now");
    }
}
