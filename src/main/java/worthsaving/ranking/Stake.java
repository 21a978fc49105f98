package worthsaving.ranking;

import java.util.List;
import java.util.Objects;
import worthsaving.deal.Outcome;
import worthsaving.deal.ToolNeed;
import worthsaving.deal.WayOut;
import worthsaving.deal.WayResult;
import worthsaving.quantity.Money;

/**
 * What choosing among several cars needs of each beside its own figures.
 *
 * @param profit its distribution in a hundred equally likely parts
 * @param receipt mean money that comes in at the sale: what a market that moves as one moves
 * @param tools tools not owned that it may make one buy; in the expected profit at their chance
 */
public record Stake(Outcome profit, Money receipt, List<ToolNeed> tools) {

    private static final int PARTS = 100;

    public Stake {
        Objects.requireNonNull(profit, "profit");
        Objects.requireNonNull(receipt, "receipt");
        tools = List.copyOf(tools);
    }

    static Stake of(Appraisal appraisal) {
        WayResult best = appraisal.assessment().bestWay();
        boolean mended = best.way() == WayOut.REPAIR_AND_SELL;
        Money paidBack = new Money(best.expectedProfit() + best.cashOut().mean(),
                appraisal.assessment().price().currency());
        return new Stake(best.profit().inParts(PARTS), mended ? appraisal.value().mean() : paidBack,
                mended ? appraisal.assessment().tools() : List.of());
    }

    static Stake of(List<Double> strip, Money receipt) {
        return new Stake(Outcome.equallyLikely(strip.stream().mapToDouble(Double::doubleValue).toArray()), receipt,
                List.of());
    }
}
