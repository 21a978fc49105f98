package worthsaving.ranking;

import java.util.Optional;
import java.util.Set;
import worthsaving.catalog.Catalogue;
import worthsaving.catalog.FindingKind;
import worthsaving.diagnosis.Evidence;
import worthsaving.diagnosis.FailureNetwork;
import worthsaving.diagnosis.FailurePatterns;
import worthsaving.diagnosis.Likelihood;
import worthsaving.diagnosis.Outcome;
import worthsaving.diagnosis.PatternSettings;
import worthsaving.quantity.Money;
import worthsaving.repair.PatternPlanner;
import worthsaving.repair.RepairPlanner;
import worthsaving.repair.RepairWork;

/**
 * What it would cost to mend the faults that a running car of the same kind, age and mileage has on average.
 * Price data are of such cars, faults and all. A deal reckons with mending everything; this is what comes back,
 * as a better sale or as work left undone, so that only what is worse than usual costs money.
 */
final class UsualFaults {

    private static final int POINTS = 256;

    private final Catalogue catalogue;
    private final RepairPlanner planner;
    private final PatternSettings patterns;

    UsualFaults(Catalogue catalogue, RepairPlanner planner, PatternSettings patterns) {
        this.catalogue = catalogue;
        this.planner = planner;
        this.patterns = new PatternSettings(0, patterns.mass(), POINTS, patterns.seed());
    }

    /** Mean of the whole plan, tools and repeats included: whoever leaves these faults alone saves all of it. */
    Money of(FailureNetwork network) {
        Money zero = Money.zero(planner.plan(Set.of()).meanCost().currency());
        if (!(network.attempt(asSoldRunning()) instanceof Outcome.Explained running)) {
            return zero;
        }
        FailurePatterns faults = running.diagnosis().patterns(patterns);
        PatternPlanner plans = planner.over(faults.items());
        double sum = 0;
        double weight = 0;
        for (int i = 0; i < faults.patterns().size(); i++) {
            Optional<RepairWork> work = plans.work(faults.patterns().get(i));
            if (work.isPresent()) {
                sum += faults.weights()[i] * work.get().expectedCost();
                weight += faults.weights()[i];
            }
        }
        return weight > 0 ? new Money(sum / weight, zero.currency()) : zero;
    }

    /** Sold as running: none of the findings that an advert would name. */
    private Evidence asSoldRunning() {
        Evidence evidence = Evidence.NONE;
        for (FindingKind finding : catalogue.findings()) {
            if (finding.stage() == FindingKind.Stage.ADVERT) {
                evidence = evidence.withFinding(finding.id(), Likelihood.FALSE);
            }
        }
        return evidence;
    }
}
