package worthsaving.desktop.lot;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import worthsaving.catalog.FailureItem;
import worthsaving.diagnosis.Belief;
import worthsaving.quantity.Money;
import worthsaving.ranking.Ranked;
import worthsaving.ranking.Standing;
import worthsaving.vehicle.Listing;

/**
 * One line of the lot.
 *
 * @param likely names of the items that moved furthest above their prior
 * @param edited whether the user has changed the listing since it was read
 */
public record LotRow(int rank, Standing standing, Optional<String> dominatedBy, List<String> likely, boolean edited) {

    public LotRow {
        likely = List.copyOf(likely);
    }

    static LotRow of(Ranked.Place place, Map<String, FailureItem> items, boolean edited) {
        List<String> likely = place.standing().likely().stream()
                .map(Belief::item)
                .map(id -> items.containsKey(id) ? items.get(id).name() : id)
                .toList();
        return new LotRow(place.rank(), place.standing(), place.dominatedBy(), likely, edited);
    }

    public Listing listing() {
        return standing.listing();
    }

    Optional<Money> ask() {
        return listing().ask().get();
    }

    Optional<String> nextCheck() {
        return standing.nextCheck().map(check -> check.finding().name());
    }
}
