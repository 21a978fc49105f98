package worthsaving.report;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import worthsaving.intake.ColumnMemory;
import worthsaving.intake.IntakeFault;
import worthsaving.intake.RefusedRow;

/**
 * Rows that were left out, for mending in a spreadsheet: their cells under their header, and in a last column why. Cells
 * that a spreadsheet would run as a formula are neutralised. Mended, the file can be read again as it is.
 */
public final class BadRows {

    private final CsvWriter csv;
    private final int width;

    /** Writes the header at once. */
    public BadRows(Appendable out, List<String> header) throws IOException {
        List<String> names = new ArrayList<>(header);
        names.add(ColumnMemory.REASON);
        this.width = names.size();
        this.csv = new CsvWriter(out, names.toArray(String[]::new));
    }

    /** A row with fewer cells than the header is filled up; what is beyond it goes into the reason. */
    public void row(RefusedRow row) throws IOException {
        List<Object> cells = new ArrayList<>(row.cells().subList(0, Math.min(width - 1, row.cells().size())));
        while (cells.size() < width - 1) {
            cells.add("");
        }
        String beyond = row.cells().size() < width ? "" : "; cells beyond the header: "
                + String.join(" | ", row.cells().subList(width - 1, row.cells().size()));
        cells.add(row.faults().stream()
                .filter(f -> f.effect() == IntakeFault.Effect.ROW_REFUSED).map(BadRows::told)
                .collect(Collectors.joining("; ")) + beyond);
        csv.row(cells.toArray());
    }

    private static String told(IntakeFault fault) {
        return "row " + fault.row() + (fault.column().isEmpty() ? "" : ", " + fault.column()) + ": " + fault.what()
                + " (" + fault.mend() + ")";
    }
}
