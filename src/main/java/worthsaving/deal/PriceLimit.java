package worthsaving.deal;

import java.util.Arrays;
import java.util.OptionalDouble;
import worthsaving.deal.MostToPay.Binding;

/**
 * Greatest price at which a way out still meets a buyer's rule. Profit falls with the price at every
 * point, so expected profit, certainty equivalent and profit per hour fall and chance of loss rises; each
 * part of the rule is bisected on its own and the least price counts.
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
        Limit limit = new Limit(greatest(new Expected(target)), Binding.TARGET_PROFIT);
        double most = rule.mostChanceOfLoss().value() + 1e-12;
        limit = lower(limit, new Limit(greatest(new Loss(most)), Binding.CHANCE_OF_LOSS));
        if (rule.riskTolerance().isPresent()) {
            Sure sure = new Sure(target, rule.riskTolerance().get().amount());
            limit = lower(limit, new Limit(greatest(sure), Binding.RISK_TOLERANCE));
        }
        double hours = PatternMeans.mean(flow.ownHours(), weights);
        if (rule.leastPerHour().isPresent() && hours > 0) {
            double least = rule.leastPerHour().getAsDouble() * hours - PatternMeans.mean(flow.ownLabour(), weights);
            limit = lower(limit, new Limit(greatest(new Expected(least)), Binding.PROFIT_PER_HOUR));
        }
        return limit;
    }

    OptionalDouble breakEven() {
        return greatest(new Expected(0));
    }

    double expectedProfit(double price) {
        double sum = 0;
        for (int i = 0; i < weights.length; i++) {
            sum += weights[i] * flow.profit(i, price, incomeTax);
        }
        return sum;
    }

    /** What the profit at a price is worth under a rule: its certainty equivalent, or its mean. */
    double worth(double price, BuyerRule rule) {
        return rule.riskTolerance()
                .map(r -> Outcome.of(flow.profits(price, incomeTax), weights).certaintyEquivalent(r.amount()))
                .orElseGet(() -> expectedProfit(price));
    }

    /** What must not fall below zero. Once a price is known to lie between two, few points are left to look at. */
    private abstract class Margin {
        final int[] open = new int[weights.length];
        int count = weights.length;

        Margin() {
            Arrays.setAll(open, i -> i);
        }

        abstract double at(double price);

        /** Whether the point behaves the same at all prices between, and has been counted in. */
        abstract boolean settled(int point, double low, double high);

        final void between(double low, double high) {
            int kept = 0;
            for (int k = 0; k < count; k++) {
                if (!settled(open[k], low, high)) {
                    open[kept++] = open[k];
                }
            }
            count = kept;
        }
    }

    /** Expected profit over a target: at each point linear in the price on either side of where tax begins. */
    private final class Expected extends Margin {
        private double level;
        private double slope;

        Expected(double target) {
            level = -target;
        }

        @Override
        double at(double price) {
            double sum = level - slope * price;
            for (int k = 0; k < count; k++) {
                sum += weights[open[k]] * flow.profit(open[k], price, incomeTax);
            }
            return sum;
        }

        @Override
        boolean settled(int point, double low, double high) {
            boolean taxed = flow.taxable(point, high) > 0;
            if (taxed != flow.taxable(point, low) > 0) {
                return false;
            }
            double tax = taxed ? incomeTax[point] : 0;
            level += weights[point] * (flow.before()[point] * (1 - tax) - tax * flow.ownLabour()[point]);
            slope += weights[point] * flow.unit()[point] * (1 - tax);
            return true;
        }
    }

    /** Certainty equivalent over a target. No point can be counted in ahead: each moves at its own rate. */
    private final class Sure extends Margin {
        private final double target;
        private final double tolerance;

        Sure(double target, double tolerance) {
            this.target = target;
            this.tolerance = tolerance;
        }

        @Override
        double at(double price) {
            return Outcome.of(flow.profits(price, incomeTax), weights).certaintyEquivalent(tolerance) - target;
        }

        @Override
        boolean settled(int point, double low, double high) {
            return false;
        }
    }

    /** Room under the chance of loss put up with. */
    private final class Loss extends Margin {
        private final double most;
        private double lost;

        Loss(double most) {
            this.most = most;
        }

        @Override
        double at(double price) {
            double sum = lost;
            for (int k = 0; k < count; k++) {
                if (flow.profit(open[k], price, incomeTax) < 0) {
                    sum += weights[open[k]];
                }
            }
            return most - sum;
        }

        @Override
        boolean settled(int point, double low, double high) {
            if (flow.profit(point, low, incomeTax) < 0) {
                lost += weights[point];
                return true;
            }
            return flow.profit(point, high, incomeTax) >= 0;
        }
    }

    /** Greatest price of zero or more with a margin of zero or more; the margin never rises with price. */
    private static OptionalDouble greatest(Margin margin) {
        if (margin.at(0) < 0) {
            return OptionalDouble.empty();
        }
        double low = 0;
        double high = 1_000;
        while (high < GREATEST && margin.at(high) >= 0) {
            low = high;
            high *= 2;
        }
        while (high - low > EXACT_TO) {
            margin.between(low, high);
            double middle = (low + high) / 2;
            if (margin.at(middle) >= 0) {
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
