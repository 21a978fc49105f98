package worthsaving.desktop.lot;

import java.util.ArrayList;
import java.util.HashMap;
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

    private final Judge judge;
    private final Map<String, FailureItem> items;
    private volatile int total;
    /** The last one; a run begins after the one before has ended. */
    private volatile Content content = Content.EMPTY;

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
     * A lot judged.
     *
     * @param edited ids of listings changed since the window was opened
     */
    record Content(Ranked ranked, Order order, Set<String> edited) {

        static final Content EMPTY =
                new Content(new Ranked(List.of(), List.of()), Order.EXPECTED_PROFIT, Set.of());

        List<Listing> listings() {
            return Stream.concat(
                    ranked.places().stream().map(p -> p.standing().listing()),
                    ranked.refused().stream().map(Judged.Refused::listing)).toList();
        }

        List<Problem> problems() {
            return ranked.refused().stream().map(Problem::of).toList();
        }
    }

    Content of(Request request, BooleanSupplier cancelled, IntConsumer progress) {
        Content before = content;
        Map<String, Listing> known = new HashMap<>();
        before.listings().forEach(l -> known.put(l.id(), l));
        List<Listing> changed = request.cars().stream().filter(l -> !l.equals(known.get(l.id()))).toList();
        Set<String> edited = new TreeSet<>();
        Set<String> kept = new TreeSet<>();
        for (Listing car : request.cars()) {
            Listing was = known.get(car.id());
            if (car.equals(was)) {
                kept.add(car.id());
            }
            if (was != null && (!car.equals(was) || before.edited().contains(car.id()))) {
                edited.add(car.id());
            }
        }
        total = changed.size();
        Ranked fresh = new LotRanking(judge).rank(changed, request.order(), progress, cancelled);
        List<Standing> standings = new ArrayList<>();
        Stream.concat(before.ranked().places().stream().filter(p -> kept.contains(p.standing().listing().id())),
                fresh.places().stream()).forEach(p -> standings.add(p.standing()));
        List<Judged.Refused> refused = new ArrayList<>(before.ranked().refused().stream()
                .filter(r -> kept.contains(r.listing().id())).toList());
        refused.addAll(fresh.refused());
        content = new Content(Ranked.of(standings, refused, request.order()), request.order(), edited);
        return content;
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
