package worthsaving.ranking;

import java.util.BitSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import worthsaving.catalog.Catalogue;
import worthsaving.catalog.FindingKind;
import worthsaving.diagnosis.Diagnosis;
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

    /**
     * Mean of the whole plan, tools and repeats included: whoever leaves these faults alone saves all of it.
     *
     * <p>Only what items save by being mended together is drawn; the mean of mending each by itself is exact
     * (difference estimation: Cochran 1977, Sampling Techniques, chapter 7). Where some item cannot be mended, the
     * mean is over the draws that can.
     */
    Money of(FailureNetwork network) {
        Money zero = Money.zero(planner.plan(Set.of()).meanCost().currency());
        if (!(network.attempt(asSoldRunning()) instanceof Outcome.Explained running)) {
            return zero;
        }
        Diagnosis diagnosis = running.diagnosis();
        FailurePatterns faults = diagnosis.patterns(patterns);
        PatternPlanner plans = planner.over(faults.items());
        double[] alone = alone(faults.items(), plans);
        double sum = 0;
        double weight = 0;
        double alike = 0;
        for (int i = 0; i < faults.patterns().size(); i++) {
            BitSet pattern = faults.patterns().get(i);
            Optional<RepairWork> work = plans.work(pattern);
            if (work.isPresent()) {
                sum += faults.weights()[i] * work.get().expectedCost();
                alike += faults.weights()[i] * pattern.stream().mapToDouble(item -> alone[item]).sum();
                weight += faults.weights()[i];
            }
        }
        if (weight == 0) {
            return zero;
        }
        double known = 0;
        for (int item = 0; item < alone.length; item++) {
            known += diagnosis.belief(faults.items().get(item)).posterior().value() * alone[item];
        }
        double mean = Double.isNaN(known) ? sum / weight : known + (sum - alike) / weight;
        return new Money(Math.max(0, mean), zero.currency());
    }

    /** By item: mending it and nothing else; not a number where nothing allowed does. */
    private static double[] alone(List<String> items, PatternPlanner plans) {
        double[] alone = new double[items.size()];
        for (int item = 0; item < alone.length; item++) {
            BitSet only = new BitSet();
            only.set(item);
            alone[item] = plans.work(only).map(RepairWork::expectedCost).orElse(Double.NaN);
        }
        return alone;
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
