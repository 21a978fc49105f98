package worthsaving.intake;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import worthsaving.vehicle.Listing;

/** A whole table in memory, for lots of ordinary size. */
public record Lot(LotSummary summary, List<LotEntry> entries, List<RefusedRow> refused, List<IntakeFault> warnings) {

    public Lot {
        entries = List.copyOf(entries);
        refused = List.copyOf(refused);
        warnings = List.copyOf(warnings);
    }

    public List<Listing> listings() {
        return entries.stream().map(LotEntry::listing).toList();
    }

    /** Everything that is wrong, warnings and reasons for refusal, in the order of the file. */
    public List<IntakeFault> faults() {
        List<IntakeFault> all = new ArrayList<>(warnings);
        refused.forEach(r -> all.addAll(r.faults()));
        all.sort(Comparator.comparingLong(IntakeFault::row));
        return all;
    }

    static final class Collector implements LotSink {
        private final List<LotEntry> entries = new ArrayList<>();
        private final List<RefusedRow> refused = new ArrayList<>();
        private final List<IntakeFault> warnings = new ArrayList<>();

        @Override
        public void good(LotEntry entry) {
            entries.add(entry);
        }

        @Override
        public void refused(RefusedRow row) {
            refused.add(row);
        }

        @Override
        public void warning(IntakeFault fault) {
            warnings.add(fault);
        }

        Lot lot(LotSummary summary) {
            return new Lot(summary, entries, refused, warnings);
        }
    }
}
