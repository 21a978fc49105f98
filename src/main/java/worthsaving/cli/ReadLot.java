package worthsaving.cli;

import java.io.PrintWriter;
import java.io.Writer;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import worthsaving.intake.LotEntry;
import worthsaving.quantity.Money;
import worthsaving.vehicle.Listing;

/** Keeps the good rows up to a limit and tells of every other one as it comes, so that memory stays bounded. */
final class ReadLot extends FaultTeller {

    private final PrintWriter err;
    private final int most;
    private final List<Listing> listings = new ArrayList<>();
    private final List<LotEntry> entries = new ArrayList<>();
    private final Map<String, Money> quotes = new HashMap<>();
    private boolean full;

    ReadLot(PrintWriter err, int most) {
        super(err);
        this.err = err;
        this.most = most;
    }

    /** Of no table. */
    static ReadLot none() {
        return new ReadLot(new PrintWriter(Writer.nullWriter()), 0);
    }

    List<Listing> listings() {
        return listings;
    }

    /** The same with what the table says beside each. */
    List<LotEntry> entries() {
        return entries;
    }

    /** What a dealer asks for the repair of a listing, where the table says. */
    Optional<Money> quote(Listing listing) {
        return Optional.ofNullable(quotes.get(listing.id()));
    }

    /**
     * One of them.
     *
     * @param id null for the first
     * @throws UserError when there is none
     */
    Listing one(String id, Path file) {
        return listings.stream().filter(l -> id == null || l.id().equals(id)).findFirst()
                .orElseThrow(() -> new UserError(ExitCode.USAGE, id == null
                        ? file + " has no usable listing" : file + " has no listing '" + id + "'"));
    }

    boolean complete() {
        return noneRefused() && !full;
    }

    @Override
    public void good(LotEntry entry) {
        if (listings.size() < most) {
            entries.add(entry);
            listings.add(entry.listing());
            kept();
            entry.quote().get().ifPresent(quote -> quotes.put(entry.listing().id(), quote));
        } else {
            full = true;
        }
    }

    @Override
    public boolean goOn(long rows, long characters) {
        return !full;
    }

    @Override
    void end() {
        super.end();
        if (full) {
            err.println("Only the first " + most + " listings were read; raise --most, or split the table");
        }
    }
}
