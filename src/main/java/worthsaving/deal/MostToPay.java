package worthsaving.deal;

import java.util.Optional;
import worthsaving.quantity.Money;

/**
 * Three prices for the talk with the seller.
 *
 * @param limit greatest price that meets the buyer's rule; above it one walks away; empty when not even
 *     a gift does
 * @param opening first offer; empty together with the limit
 * @param breakEven price at which the best way out has an expected profit of zero; empty when a gift
 *     would lose money
 * @param way the way out that allows the limit
 * @param binding what of the rule decides the limit
 */
public record MostToPay(
        Optional<Money> limit, Optional<Money> opening, Optional<Money> breakEven, WayOut way, Binding binding) {

    /** The part of a buyer's rule that a higher price would break first. */
    public enum Binding { TARGET_PROFIT, CHANCE_OF_LOSS, PROFIT_PER_HOUR, RISK_TOLERANCE }

    /** The limit in whole units of money, rounded down. */
    public Optional<Money> wholeLimit() {
        return limit.map(Money::wholeDown);
    }
}
