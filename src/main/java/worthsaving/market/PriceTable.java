package worthsaving.market;

import java.util.List;

/**
 * The rows of one price table, good and bad.
 *
 * @param badRows the first {@value PriceTableReader#BAD_ROWS_KEPT} rows that could not be read
 * @param badCount all of them
 */
public record PriceTable(DatasetShape shape, List<PriceRow> rows, List<BadRow> badRows, long badCount) {

    public PriceTable {
        rows = List.copyOf(rows);
        badRows = List.copyOf(badRows);
    }

    /** The same table with other rows. */
    public PriceTable with(List<PriceRow> others) {
        return new PriceTable(shape, others, badRows, badCount);
    }
}
