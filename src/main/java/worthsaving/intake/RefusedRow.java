package worthsaving.intake;

import java.util.List;

/**
 * A row that could not be used, as it came, with every reason.
 *
 * @param text the row as written in the file; only its beginning when it is too long
 */
public record RefusedRow(long row, String text, List<IntakeFault> faults) {

    public RefusedRow {
        faults = List.copyOf(faults);
    }
}
