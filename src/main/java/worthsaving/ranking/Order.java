package worthsaving.ranking;

import java.util.Collection;
import java.util.Comparator;
import java.util.function.ToDoubleFunction;
import worthsaving.deal.Verdict;
import worthsaving.deal.WayOut;
import worthsaving.quantity.Money;

/** What a lot is ordered by; equal values by listing id, so that the order never depends on input order. */
public enum Order implements Ordering {
    /** Expected profit of the best way out at the asking price. */
    EXPECTED_PROFIT(s -> -s.expectedProfit().amount()),
    /** Expected profit per own hour, own hours counted at nothing; cars without own hours last. */
    PROFIT_PER_HOUR(s -> -s.profitPerHour().orElse(Double.NEGATIVE_INFINITY)),
    /** Chance of a loss, smallest first. */
    CHANCE_OF_LOSS(Standing::chanceOfLoss),
    /** Room to bargain: the most to pay less the ask. */
    ROOM(s -> -room(s));

    private final ToDoubleFunction<Standing> key;

    Order(ToDoubleFunction<Standing> key) {
        this.key = key;
    }

    /** Best first. Cars not worth buying come after all others, hard stops last, whatever they would earn. */
    public Comparator<Standing> comparator() {
        return best(key);
    }

    @Override
    public Comparator<Standing> among(Collection<Standing> lot) {
        return comparator();
    }

    /** Smaller is better. */
    double key(Standing s) {
        return key.applyAsDouble(s);
    }

    static Comparator<Standing> best(ToDoubleFunction<Standing> key) {
        return Comparator.comparing((Standing s) -> s.verdict().kind() == Verdict.Kind.HARD_STOP)
                .thenComparing(s -> s.way() == WayOut.WALK_AWAY)
                .thenComparingDouble(key)
                .thenComparingDouble(s -> -room(s))
                .thenComparing(s -> s.listing().id());
    }

    static boolean worthBuying(Standing s) {
        return s.verdict().kind() != Verdict.Kind.HARD_STOP && s.way() != WayOut.WALK_AWAY;
    }

    private static double room(Standing s) {
        double limit = s.mostToPay().limit().map(Money::amount).orElse(0.0);
        return limit - s.listing().ask().get().map(Money::amount).orElse(limit);
    }
}
