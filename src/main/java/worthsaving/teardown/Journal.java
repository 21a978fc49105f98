package worthsaving.teardown;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import worthsaving.quantity.Hours;
import worthsaving.quantity.Money;
import worthsaving.vehicle.Listing;
import worthsaving.vehicle.Observation;

/** What was done to a bought car and what was found, as it came. Immutable. */
public record Journal(List<Entry> entries) {

    public static final Journal EMPTY = new Journal(List.of());

    public Journal {
        entries = List.copyOf(entries);
    }

    public Journal with(Entry entry) {
        List<Entry> more = new ArrayList<>(entries);
        more.add(entry);
        return new Journal(more);
    }

    /** Ids of the access steps opened. */
    public Set<String> opened() {
        return ids(Entry.Opened.class, Entry.Opened::step);
    }

    /** Ids of items whose part is at hand. */
    public Set<String> partsAtHand() {
        return ids(Entry.PartBought.class, Entry.PartBought::item);
    }

    /** Ids of items mended. */
    public Set<String> mended() {
        return ids(Entry.Mended.class, Entry.Mended::item);
    }

    public List<Observation> observations() {
        return of(Entry.Seen.class).map(Entry.Seen::observation).toList();
    }

    public Hours hours() {
        return Hours.of(of(Entry.Worked.class).mapToDouble(w -> w.hours().value()).sum());
    }

    /**
     * Receipts in all.
     *
     * @param zero in the currency that the receipts are in
     */
    public Money paid(Money zero) {
        return Stream.concat(of(Entry.Paid.class).map(Entry.Paid::amount),
                of(Entry.PartBought.class).map(Entry.PartBought::amount)).reduce(zero, Money::plus);
    }

    /** The listing with what the journal saw; of what one witness says of one subject the latest counts. */
    public Listing addedTo(Listing listing) {
        Map<String, Observation> all = new LinkedHashMap<>();
        Stream.concat(listing.observations().stream(), observations().stream())
                .forEach(o -> all.put(o.witness() + o.subject(), o));
        return new Listing(listing.id(), listing.vehicle(), listing.ask(), listing.seen(), listing.towMiles(),
                listing.exposure(), List.copyOf(all.values()), listing.story(), listing.origin());
    }

    private <E extends Entry> Set<String> ids(Class<E> kind, Function<E, String> id) {
        return of(kind).map(id).collect(Collectors.toUnmodifiableSet());
    }

    private <E extends Entry> Stream<E> of(Class<E> kind) {
        return entries.stream().filter(kind::isInstance).map(kind::cast);
    }
}
