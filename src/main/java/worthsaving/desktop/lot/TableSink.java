package worthsaving.desktop.lot;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.function.BooleanSupplier;
import worthsaving.intake.IntakeFault;
import worthsaving.intake.LotEntry;
import worthsaving.intake.LotSink;
import worthsaving.intake.RefusedRow;
import worthsaving.vehicle.Listing;

/** A table in memory, with all that is needed to hand refused rows back. */
final class TableSink implements LotSink {

    private final BooleanSupplier cancelled;
    private final List<Listing> listings = new ArrayList<>();
    private final List<IntakeFault> faults = new ArrayList<>();
    private final List<String> refusedRows = new ArrayList<>();
    private String header = "";

    TableSink(BooleanSupplier cancelled) {
        this.cancelled = cancelled;
    }

    @Override
    public void header(String text) {
        header = text;
    }

    @Override
    public void good(LotEntry entry) {
        listings.add(entry.listing());
    }

    @Override
    public void refused(RefusedRow row) {
        refusedRows.add(row.text());
        faults.addAll(row.faults());
    }

    @Override
    public void warning(IntakeFault fault) {
        faults.add(fault);
    }

    @Override
    public boolean goOn(long rows, long characters) {
        return !cancelled.getAsBoolean();
    }

    String header() {
        return header;
    }

    List<Listing> listings() {
        return listings;
    }

    List<String> refusedRows() {
        return refusedRows;
    }

    /** In the order of the file. */
    List<Problem> problems() {
        return faults.stream().sorted(Comparator.comparingLong(IntakeFault::row)).map(Problem::of).toList();
    }
}
