package worthsaving.ranking;

import java.util.Optional;
import worthsaving.diagnosis.FailurePatterns;
import worthsaving.quantity.Money;
import worthsaving.repair.PatternPlanner;
import worthsaving.repair.RepairPlan;
import worthsaving.repair.RepairPlanner;
import worthsaving.repair.RepairWork;
import worthsaving.repair.Workshop;

/**
 * What mending everything that may have failed costs in one workshop, on average over the failure patterns
 * that it can mend.
 *
 * @param cost parts, consumables, tools, hours and the reserve for jobs done again
 * @param unmendable probability of a pattern that nothing allowed mends; left out of the mean
 * @param wholeUnit probability that a complete engine, gearbox or pack is fitted
 */
record RepairForecast(Money cost, double unmendable, double wholeUnit) {

    static RepairForecast of(FailurePatterns patterns, RepairPlanner planner, Workshop workshop) {
        PatternPlanner plans = planner.over(patterns.items());
        double weight = 0;
        double cost = 0;
        double units = 0;
        for (int i = 0; i < patterns.patterns().size(); i++) {
            Optional<RepairWork> work = plans.work(patterns.patterns().get(i));
            if (work.isPresent()) {
                double w = patterns.weights()[i];
                weight += w;
                cost += w * work.get().expectedCost();
                units += work.get().jobs().stream().anyMatch(RepairPlan.Job::wholeUnit) ? w : 0;
            }
        }
        if (weight == 0) {
            throw new IllegalStateException("nothing allowed mends any of what may have failed");
        }
        return new RepairForecast(new Money(cost / weight, workshop.currency()), Math.max(0, 1 - weight),
                units / weight);
    }
}
