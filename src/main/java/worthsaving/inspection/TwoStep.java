package worthsaving.inspection;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * The best plan of at most two checks: a first one, and after each of its results either the decision
 * or a second one. It finds checks that pay only together, where one look ahead sees nothing. Findings
 * are independent given the state. Only the candidates that tell most are tried: those with the
 * greatest difference in an action's money between their two results, times the standard deviation of
 * the result.
 */
public final class TwoStep {

    private static final double WORTH_MORE = 1e-9;

    private final DecisionProblem decision;
    private final List<Check> candidates;

    /**
     * A check with two results.
     *
     * @param present chance of the finding in each state
     * @param cost in the money of the decision
     */
    public record Check(String id, double[] present, double cost) {}

    /**
     * @param first check to begin with
     * @param ifPresent check to go on with when the first is found; empty to decide at once
     * @param ifAbsent check to go on with when it is not found
     * @param net what the plan is worth after the cost of what is done
     */
    public record Plan(String first, Optional<String> ifPresent, Optional<String> ifAbsent, double net) {}

    private record Second(Optional<String> check, double value) {}

    /** @param tried how many of the checks are combined, best first */
    public TwoStep(DecisionProblem decision, List<Check> open, int tried) {
        this.decision = decision;
        this.candidates = open.stream()
                .sorted(Comparator.comparingDouble((Check c) -> -swing(c)).thenComparing(Check::id))
                .limit(tried)
                .toList();
    }

    /** Empty when no plan is worth its cost. A plan may come down to a single check. */
    public Optional<Plan> best() {
        double now = decision.value();
        Plan best = null;
        for (Check first : candidates) {
            Second present = second(first, first.present());
            Second absent = second(first, DecisionProblem.complement(first.present()));
            double net = present.value() + absent.value() - first.cost() - now;
            if (net > WORTH_MORE && (best == null || net > best.net())) {
                best = new Plan(first.id(), present.check(), absent.check(), net);
            }
        }
        return Optional.ofNullable(best);
    }

    /** Best continuation after a result of the first check, weighted by the chance of that result. */
    private Second second(Check first, double[] likelihood) {
        double[] joint = decision.joint(likelihood);
        double chance = decision.chance(likelihood);
        Second best = new Second(Optional.empty(), decision.best(joint));
        for (Check next : candidates) {
            if (next == first) {
                continue;
            }
            double value = decision.best(times(joint, next.present()))
                    + decision.best(times(joint, DecisionProblem.complement(next.present()))) - chance * next.cost();
            if (value > best.value() + WORTH_MORE) {
                best = new Second(Optional.of(next.id()), value);
            }
        }
        return best;
    }

    private double swing(Check c) {
        double p = decision.chance(c.present());
        if (!(p > 0 && p < 1)) {
            return 0;
        }
        double swing = 0;
        for (double[] action : decision.payoffs()) {
            double with = dot(decision.joint(c.present()), action) / p;
            double without = dot(decision.joint(DecisionProblem.complement(c.present())), action) / (1 - p);
            swing = Math.max(swing, Math.abs(with - without));
        }
        return swing * Math.sqrt(p * (1 - p));
    }

    private static double dot(double[] a, double[] b) {
        double sum = 0;
        for (int i = 0; i < a.length; i++) {
            sum += a[i] * b[i];
        }
        return sum;
    }

    private static double[] times(double[] a, double[] b) {
        double[] out = new double[a.length];
        for (int i = 0; i < out.length; i++) {
            out[i] = a[i] * b[i];
        }
        return out;
    }
}
