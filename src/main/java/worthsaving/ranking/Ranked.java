package worthsaving.ranking;

import java.util.List;
import java.util.Optional;

/**
 * A lot in order.
 *
 * @param places best first
 * @param refused listings that could not be judged, in input order
 */
public record Ranked(List<Place> places, List<Judged.Refused> refused) {

    /**
     * @param dominatedBy id of a listing that is no worse in expected profit, chance of loss, own hours and
     *     cash, and better in one of them; only among listings worth buying
     */
    public record Place(int rank, Standing standing, Optional<String> dominatedBy) {}

    public Ranked {
        places = List.copyOf(places);
        refused = List.copyOf(refused);
    }
}
