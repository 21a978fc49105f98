package worthsaving.deal;

import java.util.OptionalDouble;
import java.util.function.DoubleUnaryOperator;
import worthsaving.deal.MostToPay.Binding;

/**
 * Greatest price at which a way out still meets a buyer's rule. Profit falls with the price at every
 * point, so expected profit falls, chance of loss rises and profit per hour falls; each part of the
 * rule is bisected on its own and the least price counts.
 */
final class PriceLimit {

    private static final double EXACT_TO = 1e-4;
    private static final double GREATEST = 1e9;

    private final Flow flow;
    private final double[] weights;
    private final double[] incomeTax;

    PriceLimit(Flow flow, double[] weights, double[] incomeTax) {
        this.flow = flow;
        this.weights = weights;
        this.incomeTax = incomeTax;
    }

    /** The price, and the part of the rule that sets it. */
    record Limit(OptionalDouble price, Binding binding) {}

    Limit under(BuyerRule rule) {
        double target = rule.targetProfit().amount();
        Limit limit = new Limit(greatest(b -> expectedProfit(b) - target), Binding.TARGET_PROFIT);
        double most = rule.mostChanceOfLoss().value() + 1e-12;
        limit = lower(limit, new Limit(greatest(b -> most - chanceOfLoss(b)), Binding.CHANCE_OF_LOSS));
        double hours = PatternMeans.mean(flow.ownHours(), weights);
        if (rule.leastPerHour().isPresent() && hours > 0) {
            double least = rule.leastPerHour().getAsDouble() * hours - PatternMeans.mean(flow.ownLabour(), weights);
            limit = lower(limit, new Limit(greatest(b -> expectedProfit(b) - least), Binding.PROFIT_PER_HOUR));
        }
        return limit;
    }

    OptionalDouble breakEven() {
        return greatest(this::expectedProfit);
    }

    double expectedProfit(double price) {
        double sum = 0;
        for (int i = 0; i < weights.length; i++) {
            sum += weights[i] * flow.profit(i, price, incomeTax);
        }
        return sum;
    }

    private double chanceOfLoss(double price) {
        double sum = 0;
        for (int i = 0; i < weights.length; i++) {
            if (flow.profit(i, price, incomeTax) < 0) {
                sum += weights[i];
            }
        }
        return sum;
    }

    /** Greatest price of zero or more with a margin of zero or more; the margin never rises with price. */
    private static OptionalDouble greatest(DoubleUnaryOperator margin) {
        if (margin.applyAsDouble(0) < 0) {
            return OptionalDouble.empty();
        }
        double low = 0;
        double high = 1_000;
        while (high < GREATEST && margin.applyAsDouble(high) >= 0) {
            low = high;
            high *= 2;
        }
        while (high - low > EXACT_TO) {
            double middle = (low + high) / 2;
            if (margin.applyAsDouble(middle) >= 0) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return OptionalDouble.of(low);
    }

    private static Limit lower(Limit a, Limit b) {
        if (a.price().isEmpty()) {
            return a;
        }
        return b.price().isEmpty() || b.price().getAsDouble() < a.price().getAsDouble() ? b : a;
    }
}
