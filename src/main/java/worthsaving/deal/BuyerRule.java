package worthsaving.deal;

import java.util.EnumSet;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import worthsaving.quantity.Money;
import worthsaving.quantity.Probability;

/**
 * What the buyer asks of a deal.
 *
 * @param targetProfit least expected profit, own hours already paid at their worth
 * @param mostChanceOfLoss greatest chance of a profit below zero
 * @param leastPerHour least expected profit per own hour, own hours counted at nothing
 * @param ways ways out the buyer is ready to take; not buying is always one
 * @param hardStopAbove an item that must never be bought stops the deal when it is likelier than this
 * @param reviewAbove likelier than this, such an item, or one that wants a second look, is looked at before
 *     paying
 * @param openingShare the opening offer as a share of the most to pay or of the ask, whichever is less;
 *     common practice, no source
 * @param riskTolerance R of an exponential utility, for a buyer who cannot stand to lose much: then the certainty
 *     equivalent of the profit, not its mean, must reach the target, and orders the ways out. About the stake at
 *     which an even chance of winning R and losing R/2 is only just acceptable (Howard 1988, Management Science
 *     34:679)
 */
public record BuyerRule(
        Money targetProfit,
        Probability mostChanceOfLoss,
        OptionalDouble leastPerHour,
        Set<WayOut> ways,
        Probability hardStopAbove,
        Probability reviewAbove,
        double openingShare,
        Optional<Money> riskTolerance) {

    public BuyerRule {
        Objects.requireNonNull(targetProfit, "targetProfit");
        Objects.requireNonNull(mostChanceOfLoss, "mostChanceOfLoss");
        Objects.requireNonNull(leastPerHour, "leastPerHour");
        Objects.requireNonNull(hardStopAbove, "hardStopAbove");
        Objects.requireNonNull(reviewAbove, "reviewAbove");
        ways = Set.copyOf(ways);
        if (!(openingShare > 0 && openingShare <= 1)) {
            throw new IllegalArgumentException("the opening offer must be a share in 0 to 1, not " + openingShare);
        }
        riskTolerance.filter(r -> !(r.amount() > 0)).ifPresent(r -> {
            throw new IllegalArgumentException("a risk tolerance must be above zero, not " + r);
        });
    }

    /** A buyer to whom a profit is worth its mean. */
    public BuyerRule(
            Money targetProfit,
            Probability mostChanceOfLoss,
            OptionalDouble leastPerHour,
            Set<WayOut> ways,
            Probability hardStopAbove,
            Probability reviewAbove,
            double openingShare) {
        this(targetProfit, mostChanceOfLoss, leastPerHour, ways, hardStopAbove, reviewAbove, openingShare,
                Optional.empty());
    }

    /** A target profit and a limit on the chance of loss; every way out is open. */
    public static BuyerRule of(Money targetProfit, double mostChanceOfLoss) {
        return new BuyerRule(targetProfit, Probability.of(mostChanceOfLoss), OptionalDouble.empty(),
                EnumSet.allOf(WayOut.class), Probability.of(0.50), Probability.of(0.20), 0.825);
    }

    public BuyerRule withLeastPerHour(double perHour) {
        return new BuyerRule(targetProfit, mostChanceOfLoss, OptionalDouble.of(perHour), ways, hardStopAbove,
                reviewAbove, openingShare, riskTolerance);
    }

    public BuyerRule withWays(Set<WayOut> others) {
        return new BuyerRule(targetProfit, mostChanceOfLoss, leastPerHour, others, hardStopAbove, reviewAbove,
                openingShare, riskTolerance);
    }

    public BuyerRule withRiskTolerance(Money tolerance) {
        return new BuyerRule(targetProfit, mostChanceOfLoss, leastPerHour, ways, hardStopAbove, reviewAbove,
                openingShare, Optional.of(tolerance));
    }
}
