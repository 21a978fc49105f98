package worthsaving.ranking;

import java.util.List;
import java.util.Objects;
import worthsaving.deal.Outcome;
import worthsaving.deal.ToolNeed;
import worthsaving.deal.WayOut;

/**
 * A car that may be bought together with others. Amounts are in one currency, the same for all candidates.
 *
 * @param profit expected profit if it is the only one: own hours paid, its tools in it at their chance
 * @param cash mean cash laid out before money comes back, its tools in it at their chance, zero or more
 * @param hours mean own hours, zero or more
 * @param bays places in the workshop that it takes, zero or more
 * @param spread distribution of its profit
 * @param receipt mean money that comes in at its sale
 * @param tools tools not owned that it may make one buy
 */
public record Candidate(
        String id, double profit, double cash, double hours, int bays, Outcome spread, double receipt,
        List<ToolNeed> tools) {

    public Candidate {
        Objects.requireNonNull(id, "id");
        Objects.requireNonNull(spread, "spread");
        tools = List.copyOf(tools);
        if (!Double.isFinite(profit) || !(cash >= 0) || !(hours >= 0) || bays < 0
                || Double.isInfinite(cash) || Double.isInfinite(hours)) {
            throw new IllegalArgumentException("candidate " + id + " needs a finite profit, and cash, hours and bays of"
                    + " zero or more, not " + profit + ", " + cash + ", " + hours + ", " + bays);
        }
    }

    /** A car judged; only one that is mended or taken apart takes a place in the workshop. */
    public static Candidate of(Standing s) {
        boolean worked = s.way() == WayOut.REPAIR_AND_SELL || s.way() == WayOut.PART_OUT;
        return new Candidate(s.listing().id(), s.expectedProfit().amount(), Math.max(0, s.cashOut().amount()),
                s.ownHours().value(), worked ? 1 : 0, s.stake().profit(), s.stake().receipt().amount(),
                s.stake().tools());
    }

    double toolCost() {
        return tools.stream().mapToDouble(t -> t.expected().amount()).sum();
    }
}
