package worthsaving.casebook;

import java.time.Instant;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import worthsaving.casebook.JournalEntry.What;
import worthsaving.quantity.Hours;
import worthsaving.quantity.Money;
import worthsaving.record.Chance;
import worthsaving.record.FinishedCar;
import worthsaving.record.Quantity;
import worthsaving.teardown.Journal;
import worthsaving.vehicle.Listing;

/**
 * A case as it stands: the listing with its evidence, and all that was written about it since.
 *
 * @param added when it came into the casebook
 * @param journal in the order of writing
 * @param forecasts oldest first
 */
public record CaseFile(
        Listing listing,
        Instant added,
        List<Numbered<JournalEntry>> journal,
        List<Numbered<Photo>> photos,
        List<Forecast> forecasts,
        Optional<Actual> actual) {

    /** How the origin of an invented case begins; the stroke keeps it apart from the name of any table of the user's. */
    public static final String INVENTED = "invented sample/";

    public CaseFile {
        Objects.requireNonNull(listing, "listing");
        journal = List.copyOf(journal);
        photos = List.copyOf(photos);
        forecasts = List.copyOf(forecasts);
    }

    public String id() {
        return listing.id();
    }

    /** The journal as the reckoning of a teardown takes it; days are those of this computer's time zone. */
    public Journal teardown() {
        return new Journal(journal.stream().map(e -> e.value().line(ZoneId.systemDefault())).toList());
    }

    /** The photos taken last, the last one first. */
    public List<Photo> newestPhotos(int most) {
        return photos.stream().map(Numbered::value).sorted(Comparator.comparing(Photo::at).reversed()).limit(most).toList();
    }

    /** Whether it comes from the invented sample and not from the user; then nothing is learnt from it. */
    public boolean invented() {
        return listing.origin().startsWith(INVENTED);
    }

    /** The listing with what the journal's findings add to its evidence; the later of two on one subject counts. */
    public Listing asKnown() {
        return teardown().addedTo(listing);
    }

    /**
     * Photos that belong to an entry.
     *
     * @param entry its number
     */
    public List<Numbered<Photo>> photosOf(long entry) {
        return photos.stream().filter(p -> p.value().entry().equals(Optional.of(entry))).toList();
    }

    /** Own hours so far. */
    public Hours hours() {
        return Hours.of(works().stream().mapToDouble(w -> w.hours().value()).sum());
    }

    /**
     * Money of the receipts so far, parts among them; empty without receipts.
     *
     * @throws IllegalArgumentException in several currencies
     */
    public Optional<Money> receipts() {
        return receiptEntries().stream().map(What.Receipt::paid).reduce(Money::plus);
    }

    /** The car for the record, once it is finished. */
    public Optional<FinishedCar> finished() {
        return actual.map(a -> {
            Optional<Forecast> forecast = forecastBeforeBuying(a);
            Map<Quantity, Double> actuals = new EnumMap<>(Quantity.class);
            if (forecast.map(f -> f.currency().equals(a.sale().currency())).orElse(false)) {
                actuals.put(Quantity.VALUE, a.sale().amount());
                actuals.put(Quantity.COST, a.cost().amount());
            }
            actuals.put(Quantity.HOURS, a.hours().value());
            actuals.put(Quantity.DAYS, (double) a.days());
            List<Chance> items = new ArrayList<>();
            forecast.ifPresent(f -> a.items().keySet().stream().sorted().filter(f.items()::containsKey)
                    .forEach(item -> items.add(new Chance(item, f.items().get(item).value(), a.items().get(item)))));
            return new FinishedCar(id(), forecast.map(Forecast::spreads).orElse(Map.of()), actuals, items,
                    speed(), partPrice(), a.daysToSell());
        });
    }

    /** The last forecast that was made by the day of buying, or else the first one. */
    private Optional<Forecast> forecastBeforeBuying(Actual a) {
        return forecasts.stream()
                .filter(f -> !f.made().atZone(ZoneOffset.UTC).toLocalDate().isAfter(a.bought()))
                .reduce((first, second) -> second)
                .or(() -> forecasts.stream().findFirst());
    }

    private OptionalDouble speed() {
        double taken = 0;
        double planned = 0;
        for (What.Work w : works()) {
            if (w.planned().isPresent()) {
                taken += w.hours().value();
                planned += w.planned().get().value();
            }
        }
        return ratio(taken, planned);
    }

    private OptionalDouble partPrice() {
        double paid = 0;
        double planned = 0;
        for (What.Receipt r : receiptEntries()) {
            if (r.planned().isPresent()) {
                paid += r.paid().amount();
                planned += r.planned().get().amount();
            }
        }
        return ratio(paid, planned);
    }

    private static OptionalDouble ratio(double taken, double planned) {
        return taken > 0 && planned > 0 ? OptionalDouble.of(taken / planned) : OptionalDouble.empty();
    }

    private List<What.Work> works() {
        return of(What.Work.class).toList();
    }

    /** With the parts bought for an item, which are receipts as well. */
    private List<What.Receipt> receiptEntries() {
        return Stream.concat(of(What.Receipt.class),
                of(What.PartBought.class).map(p -> new What.Receipt(p.paid(), p.planned()))).toList();
    }

    private <T extends What> Stream<T> of(Class<T> kind) {
        return journal.stream().map(e -> e.value().what()).filter(kind::isInstance).map(kind::cast);
    }
}
