package worthsaving.desktop.lot;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.BooleanSupplier;
import java.util.function.IntConsumer;
import java.util.stream.Stream;
import worthsaving.catalog.FailureItem;
import worthsaving.desktop.Ground;
import worthsaving.ranking.Judge;
import worthsaving.ranking.Judged;
import worthsaving.ranking.LotRanking;
import worthsaving.ranking.Order;
import worthsaving.ranking.Ranked;
import worthsaving.ranking.Standing;
import worthsaving.vehicle.Listing;

/** What the lot does in the background: judge its listings, those that changed anew, and put them in order. */
final class LotWork {

    private static final int FIRST_PART = 6;

    private final Judge judge;
    private final Map<String, FailureItem> items;
    private volatile int total;
    /** The last one; a run begins after the one before has ended. */
    private volatile Content content = Content.EMPTY;
    private volatile Request last;
    /** Listings that runs before this one have judged for the same request. */
    private volatile int earlier;

    LotWork(Ground ground) {
        this.judge = new Judge(ground.catalogue(), ground.values(), ground.settings());
        this.items = ground.catalogue().itemsById();
    }

    /**
     * The cars that the lot is to hold.
     *
     * @param by whose judge is asked
     */
    record Request(LotWork by, List<Listing> cars, Order order) {}

    /**
     * A lot judged, or the part of it that is.
     *
     * @param edited ids of listings changed since the window was opened
     * @param whole whether every car asked for is in it as it is now; if not, asking again goes on with the next ones
     */
    record Content(Ranked ranked, Order order, Set<String> edited, boolean whole) {

        static final Content EMPTY =
                new Content(new Ranked(List.of(), List.of()), Order.EXPECTED_PROFIT, Set.of(), true);

        List<Listing> listings() {
            return Stream.concat(
                    ranked.places().stream().map(p -> p.standing().listing()),
                    ranked.refused().stream().map(Judged.Refused::listing)).toList();
        }

        List<Problem> problems() {
            return ranked.refused().stream().map(Problem::of).toList();
        }
    }

    /** Judges a part of what is not judged yet: few at first, so that they are soon seen, then ever more. */
    Content of(Request request, BooleanSupplier cancelled, IntConsumer progress) {
        Content before = content;
        Map<String, Listing> known = new HashMap<>();
        before.listings().forEach(l -> known.put(l.id(), l));
        List<Listing> changed = request.cars().stream().filter(l -> !l.equals(known.get(l.id()))).toList();
        int done = request == last ? earlier : 0;
        last = request;
        total = done + changed.size();
        List<Listing> part = changed.subList(0, Math.min(changed.size(), Math.max(FIRST_PART, done / 2)));
        Ranked fresh = new LotRanking(judge).rank(part, request.order(), n -> progress.accept(done + n), cancelled);
        earlier = done + part.size();
        content = joined(before, fresh, request, part.size() == changed.size());
        return content;
    }

    private static Content joined(Content before, Ranked fresh, Request request, boolean whole) {
        Set<String> judged = new HashSet<>();
        fresh.places().forEach(p -> judged.add(p.standing().listing().id()));
        fresh.refused().forEach(r -> judged.add(r.listing().id()));
        Set<String> kept = new HashSet<>();
        request.cars().stream().map(Listing::id).filter(id -> !judged.contains(id)).forEach(kept::add);
        List<Standing> standings = new ArrayList<>();
        Stream.concat(before.ranked().places().stream().filter(p -> kept.contains(p.standing().listing().id())),
                fresh.places().stream()).forEach(p -> standings.add(p.standing()));
        List<Judged.Refused> refused = new ArrayList<>(before.ranked().refused().stream()
                .filter(r -> kept.contains(r.listing().id())).toList());
        refused.addAll(fresh.refused());
        Set<String> edited = new TreeSet<>();
        before.listings().stream().map(Listing::id)
                .filter(id -> judged.contains(id) || kept.contains(id) && before.edited().contains(id)).forEach(edited::add);
        return new Content(Ranked.of(standings, refused, request.order()), request.order(), edited, whole);
    }

    Judge judge() {
        return judge;
    }

    /** How many listings are being judged, or were last. */
    int total() {
        return total;
    }

    String itemName(String id) {
        return items.containsKey(id) ? items.get(id).name() : id;
    }

    List<LotRow> rows(Content of) {
        return of.ranked().places().stream()
                .map(place -> LotRow.of(place, items, of.edited().contains(place.standing().listing().id())))
                .toList();
    }

    /** The listing with an id, if it was judged or refused. */
    static Optional<Listing> find(Content content, String id) {
        return content.listings().stream().filter(l -> l.id().equals(id)).findFirst();
    }
}
