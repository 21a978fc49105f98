package worthsaving.deal;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import worthsaving.quantity.Money;

/**
 * A purchase judged over a handful of exclusive scenarios: the sum one does by hand, exact.
 * Profit in a scenario = ledger net - repair - cost of the price, or, where the scenario has a way out
 * of its own, what that leaves - cost of the price. A repeat counts at its expectation, except in
 * {@link #outcome}, which splits it.
 *
 * @param hourly what a working hour costs: own worth or a shop's rate
 */
public record ScenarioDeal(SaleLedger ledger, PriceTerms priceTerms, Money hourly, List<Scenario> scenarios) {

    private static final double SUM_TOLERANCE = 1e-9;

    public ScenarioDeal {
        Objects.requireNonNull(ledger, "ledger");
        Objects.requireNonNull(priceTerms, "priceTerms");
        Objects.requireNonNull(hourly, "hourly");
        scenarios = List.copyOf(scenarios);
        double sum = scenarios.stream().mapToDouble(s -> s.probability().value()).sum();
        if (Math.abs(sum - 1) > SUM_TOLERANCE) {
            throw new IllegalArgumentException("the scenarios' probabilities must add up to 1, not " + sum);
        }
    }

    public ScenarioDeal withSaleValue(Money value) {
        return new ScenarioDeal(ledger.withSaleValue(value), priceTerms, hourly, scenarios);
    }

    public ScenarioDeal withScenarios(List<Scenario> others) {
        return new ScenarioDeal(ledger, priceTerms, hourly, others);
    }

    /** What a scenario leaves before the price is paid. */
    public Money beforePrice(Scenario scenario) {
        return scenario.otherWayOut().orElseGet(() -> ledger.net().minus(scenario.expectedCost(hourly)));
    }

    public Money profit(Scenario scenario, Money price) {
        return beforePrice(scenario).minus(priceTerms.costOf(price));
    }

    /** Profits in the order of the scenarios. */
    public double[] profits(Money price) {
        return scenarios.stream().mapToDouble(s -> profit(s, price).amount()).toArray();
    }

    public double[] probabilities() {
        return scenarios.stream().mapToDouble(s -> s.probability().value()).toArray();
    }

    public Money expectedRepair() {
        return expect(scenarios.stream().map(s -> s.expectedCost(hourly)).toList());
    }

    public Money expectedBeforePrice() {
        return expect(scenarios.stream().map(this::beforePrice).toList());
    }

    public Money expectedProfit(Money price) {
        return expectedBeforePrice().minus(priceTerms.costOf(price));
    }

    /** Probability of the scenarios whose profit is below zero. */
    public double chanceOfLoss(Money price) {
        return scenarios.stream()
                .filter(s -> profit(s, price).amount() < 0)
                .mapToDouble(s -> s.probability().value())
                .sum();
    }

    /** Least profit over the scenarios. */
    public Money worst(Money price) {
        return scenarios.stream().map(s -> profit(s, price)).min(Money::compareTo).orElseThrow();
    }

    /** The price at which the expected profit is just the target; negative when no price is low enough. */
    public Money mostToPay(Money targetProfit) {
        return priceTerms.priceFor(expectedBeforePrice().minus(targetProfit));
    }

    /** The price at which this scenario neither gains nor loses. */
    public Money breakEvenPrice(Scenario scenario) {
        return priceTerms.priceFor(beforePrice(scenario));
    }

    /** All outcomes with every repeat split into happening and not happening. */
    public Outcome outcome(Money price) {
        List<double[]> atoms = new ArrayList<>();
        double cost = priceTerms.costOf(price).amount();
        for (Scenario s : scenarios) {
            double p = s.probability().value();
            if (s.otherWayOut().isPresent() || s.repeat().isEmpty()) {
                atoms.add(new double[] {beforePrice(s).amount() - cost, p});
            } else {
                double once = ledger.net().minus(s.costOnce(hourly)).amount() - cost;
                Scenario.Repeat repeat = s.repeat().get();
                double chance = repeat.chance().value();
                atoms.add(new double[] {once, p * (1 - chance)});
                atoms.add(new double[] {once - repeat.cost().amount(), p * chance});
            }
        }
        return Outcome.of(
                atoms.stream().mapToDouble(a -> a[0]).toArray(), atoms.stream().mapToDouble(a -> a[1]).toArray());
    }

    /** Probability of a finding, given how probable it is in each scenario. */
    public double chanceOf(double... likelihood) {
        checkLikelihood(likelihood);
        double sum = 0;
        for (int i = 0; i < likelihood.length; i++) {
            sum += scenarios.get(i).probability().value() * likelihood[i];
        }
        return sum;
    }

    /**
     * The same deal after a finding, by Bayes' rule.
     *
     * @param likelihood probability of the finding in each scenario, in their order
     * @throws IllegalArgumentException when the finding is impossible in every scenario
     */
    public ScenarioDeal given(double... likelihood) {
        double chance = chanceOf(likelihood);
        if (!(chance > 0)) {
            throw new IllegalArgumentException("this finding cannot occur in any scenario that is still possible");
        }
        List<Scenario> posterior = new ArrayList<>();
        for (int i = 0; i < likelihood.length; i++) {
            Scenario s = scenarios.get(i);
            posterior.add(s.withProbability(Math.min(1, s.probability().value() * likelihood[i] / chance)));
        }
        return withScenarios(posterior);
    }

    private Money expect(List<Money> amounts) {
        Money total = Money.zero(hourly.currency());
        for (int i = 0; i < amounts.size(); i++) {
            total = total.plus(amounts.get(i).times(scenarios.get(i).probability().value()));
        }
        return total;
    }

    private void checkLikelihood(double[] likelihood) {
        if (likelihood.length != scenarios.size()) {
            throw new IllegalArgumentException("a finding needs one probability for each of " + scenarios.size()
                    + " scenarios, not " + likelihood.length);
        }
        for (double l : likelihood) {
            if (!(l >= 0 && l <= 1)) {
                throw new IllegalArgumentException("a probability must lie in 0 to 1, not " + l);
            }
        }
    }
}
