package worthsaving.inspection;

import worthsaving.catalog.FindingKind;
import worthsaving.quantity.Money;
import worthsaving.quantity.Probability;

/**
 * What one check is worth before the price is paid.
 *
 * @param chancePresent how probable the finding is, given all that is known
 * @param gross expected value of the sample information, its cost not yet taken off
 * @param cost money, tools not owned and the minutes at their worth
 * @param profitIfPresent expected profit of the best way out that is open, at this price, if the finding
 *     is met; never below zero, since one may walk away
 * @param profitIfAbsent the same if it is not met
 * @param decides whether the two results call for different actions
 */
public record CheckValue(
        FindingKind finding,
        Probability chancePresent,
        Money gross,
        Money cost,
        Money profitIfPresent,
        Money profitIfAbsent,
        boolean decides) {

    /** Gross value less cost; below zero the check is not worth making. */
    public Money net() {
        return gross.minus(cost);
    }
}
