package worthsaving.inspection;

import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import worthsaving.catalog.FindingKind;
import worthsaving.deal.Assessment;
import worthsaving.deal.PatternProfit;
import worthsaving.deal.WayOut;
import worthsaving.diagnosis.Diagnosis;
import worthsaving.diagnosis.FindingChances;
import worthsaving.quantity.Money;

/**
 * Two checks together, where no single one is worth its cost: the first alone changes nothing, but what it
 * shows may make the second decide.
 */
public final class LookAhead {

    /** Checks that are combined; the ones that tell most. */
    private static final int TRIED = 16;

    private final CheckCosts costs;

    /**
     * @param ifPresent check to go on with when the first is met; empty to decide at once
     * @param ifAbsent check to go on with when it is not met
     * @param net worth of both together, after the cost of what is done
     */
    public record Pair(FindingKind first, Optional<FindingKind> ifPresent, Optional<FindingKind> ifAbsent, Money net) {}

    public LookAhead(CheckCosts costs) {
        this.costs = costs;
    }

    /**
     * @param open the checks that can be made
     * @param assessment of the diagnosis's own failure patterns, at the price in question
     * @return empty when no two of them are worth their cost
     */
    public Optional<Pair> best(List<FindingKind> open, Diagnosis diagnosis, Assessment assessment) {
        List<PatternProfit> profits = assessment.patternProfits();
        FindingChances chances =
                diagnosis.network().findingChances(profits.stream().map(PatternProfit::pattern).toList());
        Map<String, FindingKind> byId = open.stream().collect(Collectors.toMap(FindingKind::id, f -> f));
        List<TwoStep.Check> checks = open.stream()
                .map(f -> new TwoStep.Check(f.id(), chances.of(f.id()), costs.of(f).amount()))
                .toList();
        return new TwoStep(decision(profits, assessment), checks, TRIED).best()
                .filter(plan -> plan.ifPresent().isPresent() || plan.ifAbsent().isPresent())
                .map(plan -> new Pair(byId.get(plan.first()), plan.ifPresent().map(byId::get),
                        plan.ifAbsent().map(byId::get), new Money(plan.net(), assessment.price().currency())));
    }

    /** Buy by one of the open ways out, at profit less the target, or leave it. */
    private static DecisionProblem decision(List<PatternProfit> profits, Assessment assessment) {
        double total = profits.stream().mapToDouble(PatternProfit::weight).sum();
        double[] prior = profits.stream().mapToDouble(p -> p.weight() / total).toArray();
        double target = assessment.rule().targetProfit().amount();
        Set<WayOut> ways = assessment.rule().ways();
        double[][] payoffs = Arrays.stream(WayOut.values())
                .filter(way -> way == WayOut.WALK_AWAY || ways.contains(way))
                .map(way -> profits.stream()
                        .mapToDouble(p -> way == WayOut.WALK_AWAY ? 0 : p.profit()[way.ordinal()] - target)
                        .toArray())
                .toArray(double[][]::new);
        return new DecisionProblem(prior, payoffs);
    }
}
