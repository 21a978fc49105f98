package worthsaving.ranking;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import worthsaving.deal.Verdict;
import worthsaving.deal.WayOut;

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

    /** Puts listings already judged in order. */
    public static Ranked of(List<Standing> standings, List<Judged.Refused> refused, Ordering order) {
        List<Standing> sorted = standings.stream().sorted(order.among(standings)).toList();
        List<Place> places = new ArrayList<>();
        for (int i = 0; i < sorted.size(); i++) {
            places.add(new Place(i + 1, sorted.get(i), dominator(sorted, sorted.get(i))));
        }
        return new Ranked(places, refused);
    }

    private static Optional<String> dominator(List<Standing> standings, Standing of) {
        if (of.way() == WayOut.WALK_AWAY) {
            return Optional.empty();
        }
        return standings.stream()
                .filter(other -> other.verdict().kind() != Verdict.Kind.HARD_STOP && other.dominates(of))
                .map(other -> other.listing().id())
                .findFirst();
    }
}
