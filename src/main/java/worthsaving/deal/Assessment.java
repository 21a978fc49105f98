package worthsaving.deal;

import java.util.List;
import java.util.Optional;
import worthsaving.quantity.Money;

/**
 * A car judged at one price under one buyer's rule.
 *
 * @param ask the asking price, when known
 * @param price what the outcomes are computed at: the ask, or else the most to pay, or else zero
 * @param ways every way out, in the order of {@link WayOut}
 * @param best the way out to plan for at this price
 * @param effects failure items by how much expected profit hangs on them (of repairing, when
 *     the best is not to buy), heaviest first
 * @param chanceOfStopping probability of finding that finishing is not worth it
 * @param chanceUnmendable probability of a pattern that nothing allowed mends
 * @param patternProfits profit of each way out by failure pattern at this price, for value of information
 * @param valueOfKnowing what it would be worth to know what has failed before paying: expected value of
 *     perfect information on the pattern, for this price and target
 * @param tools tools not owned that repairing and selling may make one buy; their price at its chance is in
 *     the expected profit of that way
 */
public record Assessment(
        Optional<Money> ask,
        Money price,
        List<WayResult> ways,
        WayOut best,
        MostToPay mostToPay,
        Verdict verdict,
        List<ItemEffect> effects,
        double chanceOfStopping,
        double chanceUnmendable,
        Money valueOfKnowing,
        List<PatternProfit> patternProfits,
        BuyerRule rule,
        DealTerms terms,
        DealCase.Method method,
        List<ToolNeed> tools) {

    public Assessment {
        ways = List.copyOf(ways);
        effects = List.copyOf(effects);
        patternProfits = List.copyOf(patternProfits);
        tools = List.copyOf(tools);
    }

    public WayResult way(WayOut way) {
        return ways.get(way.ordinal());
    }

    /** What a way's profit is worth for sure to a buyer with a risk tolerance; empty for a rule without one. */
    public Optional<Money> certaintyEquivalent(WayOut way) {
        return rule.riskTolerance().map(r ->
                new Money(way(way).profit().certaintyEquivalent(r.amount()), price.currency()));
    }

    public WayResult bestWay() {
        return way(best);
    }
}
