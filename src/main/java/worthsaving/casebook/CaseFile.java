package worthsaving.casebook;

import java.time.Instant;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;
import worthsaving.casebook.JournalEntry.What;
import worthsaving.quantity.Hours;
import worthsaving.quantity.Money;
import worthsaving.record.Chance;
import worthsaving.record.FinishedCar;
import worthsaving.record.Quantity;
import worthsaving.vehicle.Listing;
import worthsaving.vehicle.Observation;

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

    /** Whether it comes from the invented sample and not from the user; then nothing is learnt from it. */
    public boolean invented() {
        return listing.origin().startsWith(INVENTED);
    }

    /** The listing with what the journal's findings add to its evidence; the later of two on one subject counts. */
    public Listing asKnown() {
        Map<String, Observation> seen = new LinkedHashMap<>();
        listing.observations().forEach(o -> seen.put(o.witness() + o.subject(), o));
        of(What.Finding.class).forEach(f -> seen.put(f.seen().witness() + f.seen().subject(), f.seen()));
        return new Listing(listing.id(), listing.vehicle(), listing.ask(), listing.seen(), listing.towMiles(),
                listing.exposure(), List.copyOf(seen.values()), listing.story(), listing.origin());
    }

    /** Own hours so far. */
    public Hours hours() {
        return Hours.of(works().stream().mapToDouble(w -> w.hours().value()).sum());
    }

    /** Money of the receipts so far; empty without receipts. @throws IllegalArgumentException in several currencies */
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
        return of(What.Work.class);
    }

    private List<What.Receipt> receiptEntries() {
        return of(What.Receipt.class);
    }

    private <T extends What> List<T> of(Class<T> kind) {
        return journal.stream().map(e -> e.value().what()).filter(kind::isInstance).map(kind::cast).toList();
    }
}
