package worthsaving.ranking;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import worthsaving.deal.WayOut;

/**
 * A lot in order.
 *
 * @param places best first
 * @param refused listings that could not be judged, in input order
 */
public record Ranked(List<Place> places, List<Judged.Refused> refused) {

    /**
     * @param dominatedBy id of the best placed listing that is no worse in expected profit, chance of loss, own
     *     hours and cash, and better in one of them; only among listings worth buying
     */
    public record Place(int rank, Standing standing, Optional<String> dominatedBy) {}

    public Ranked {
        places = List.copyOf(places);
        refused = List.copyOf(refused);
    }

    /** Puts listings already judged in order. */
    public static Ranked of(List<Standing> standings, List<Judged.Refused> refused, Ordering order) {
        List<Standing> sorted = standings.stream().sorted(order.among(standings)).toList();
        List<Standing> worthBuying = sorted.stream().filter(Order::worthBuying).toList();
        Dominance dominance = new Dominance(worthBuying.stream().map(Ranked::burdens).toList());
        List<Place> places = new ArrayList<>();
        for (Standing standing : sorted) {
            OptionalInt first = standing.way() == WayOut.WALK_AWAY ? OptionalInt.empty()
                    : dominance.firstOver(burdens(standing));
            places.add(new Place(places.size() + 1, standing, first.isPresent()
                    ? Optional.of(worthBuying.get(first.getAsInt()).listing().id()) : Optional.empty()));
        }
        return new Ranked(places, refused);
    }

    private static double[] burdens(Standing s) {
        return new double[] {-s.expectedProfit().amount(), s.chanceOfLoss(), s.ownHours().value(),
            s.cashOut().amount()};
    }
}
