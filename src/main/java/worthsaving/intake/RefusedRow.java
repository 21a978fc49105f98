package worthsaving.intake;

import java.util.List;

/**
 * A row that could not be used, as it came, with every reason.
 *
 * @param text the row as written in the file; only its beginning when it is too long
 * @param cells its cells, quotes taken off, as far as they could be told apart
 */
public record RefusedRow(long row, String text, List<String> cells, List<IntakeFault> faults) {

    public RefusedRow {
        cells = List.copyOf(cells);
        faults = List.copyOf(faults);
    }
}
