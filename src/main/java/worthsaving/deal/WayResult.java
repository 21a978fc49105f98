package worthsaving.deal;

import java.util.Optional;
import java.util.OptionalDouble;
import worthsaving.quantity.Hours;
import worthsaving.quantity.Money;

/**
 * One way out at one price.
 *
 * @param profit own hours paid at their worth, after income tax
 * @param cashOut cash laid out before any money comes back, price included
 * @param hours own hours
 * @param profitPerHour expected profit with own hours counted at nothing, per own hour; empty when no
 *     own hours are needed
 * @param days from purchase to money
 * @param mostToPay greatest price that meets the buyer's rule this way; empty when not even a gift does
 */
public record WayResult(
        WayOut way,
        Outcome profit,
        Outcome cashOut,
        Outcome hours,
        OptionalDouble profitPerHour,
        Outcome days,
        Optional<Money> mostToPay) {

    /** The most to pay in whole units of money, rounded down. */
    public Optional<Money> wholeLimit() {
        return mostToPay.map(Money::wholeDown);
    }

    /** Mean of the own hours. */
    public Hours ownHours() {
        return Hours.of(hours.mean());
    }

    public double expectedProfit() {
        return profit.mean();
    }

    public double chanceOfLoss() {
        return profit.chanceOfLoss();
    }

    /** Mean of the worst 5 % of outcomes: the conditional value at risk. */
    public double meanOfWorstTwentieth() {
        return profit.meanOfWorst(0.05);
    }
}
