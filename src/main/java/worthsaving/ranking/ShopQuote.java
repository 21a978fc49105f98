package worthsaving.ranking;

import java.util.List;
import worthsaving.deal.Outcome;
import worthsaving.quantity.Money;
import worthsaving.repair.Quote;

/**
 * What a workshop writes for a car's owner before it is taken apart.
 *
 * @param quote the plan for what is likelier failed than not, line by line
 * @param assumed what the plan takes for failed, by name
 * @param price what the work comes to once all is known, over everything the complaint may turn out to be
 * @param ceiling greatest amount to be agreed in writing
 * @param openingUp what opening up costs if the owner then says no
 * @param stopValue what the car fetches in pieces then
 * @param calls what would change the price, for which the owner is called before going on; dearest first
 * @param cautions the usual ones for what is worked on
 */
public record ShopQuote(
        Quote quote, List<String> assumed, Outcome price, Money ceiling, Money openingUp, Money stopValue,
        List<CallPoint> calls, List<String> cautions) {

    /**
     * Something found when the car is open.
     *
     * @param sound whether an item of the plan turns out sound; otherwise one more has failed
     * @param price of the whole work then, at the mean
     */
    public record CallPoint(String item, String name, boolean sound, double chance, Money change, Money price) {}

    public ShopQuote {
        assumed = List.copyOf(assumed);
        calls = List.copyOf(calls);
        cautions = List.copyOf(cautions);
    }

    /** Price that is not exceeded with this probability. */
    public Money notExceeded(double probability) {
        return new Money(price.quantile(probability), ceiling.currency());
    }

    /** Probability that the work comes to more than an amount. */
    public double chanceAbove(Money amount) {
        return 1 - price.below(Math.nextUp(amount.amount()));
    }
}
