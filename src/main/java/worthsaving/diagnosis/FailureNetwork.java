package worthsaving.diagnosis;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import worthsaving.catalog.Catalogue;
import worthsaving.diagnosis.inference.BucketTree;
import worthsaving.diagnosis.inference.NoisyOr;
import worthsaving.vehicle.Exposure;
import worthsaving.vehicle.Vehicle;

/**
 * The failure items and findings of the catalogue as a Bayesian network for one car.
 *
 * <p>An item fails on its own with its prior at the car's age and mileage, or by secondary damage:
 * P(failed | causes) = 1 - (1 - prior) prod over failed causes (1 - chance). A finding is a noisy-OR of
 * the items that produce it, its false rate as leak. Ranges enter with their mode. Items of one
 * exclusive group never fail together: the joint is conditioned on at most one of each. What the
 * powertrain leaves open is a hidden variable, so that items that exclude each other by powertrain
 * never fail together either.
 */
public final class FailureNetwork {

    private final FailureModel model;
    private final ExactPosterior prior;

    private FailureNetwork(FailureModel model) {
        this.model = model;
        this.prior = solve(Evidence.NONE);
    }

    public static FailureNetwork of(Catalogue catalogue, Vehicle vehicle, Exposure exposure, LocalDate on) {
        return new FailureNetwork(FailureModel.of(catalogue, vehicle, exposure, on, PowertrainShares.USUAL));
    }

    /** Ids of the items that this car can have, in catalogue order. */
    public List<String> items() {
        return model.items();
    }

    /** What the car's description left open and what was assumed for it, in words. */
    public List<String> assumptions() {
        return model.assumptions();
    }

    /**
     * @throws ImpossibleEvidenceException when the evidence has probability zero
     * @throws IllegalArgumentException for a finding that the catalogue does not know
     */
    public Diagnosis diagnose(Evidence evidence) {
        Outcome outcome = attempt(evidence);
        if (outcome instanceof Outcome.Impossible impossible) {
            throw new ImpossibleEvidenceException(impossible);
        }
        return ((Outcome.Explained) outcome).diagnosis();
    }

    /** As {@link #diagnose}, with impossible evidence as a result. */
    public Outcome attempt(Evidence evidence) {
        ExactPosterior posterior = solve(evidence);
        return posterior.possible()
                ? new Outcome.Explained(new Diagnosis(this, evidence, posterior))
                : new Outcome.Impossible(conflicting(evidence));
    }

    /** Drops what can be dropped while the rest stays impossible. */
    private List<String> conflicting(Evidence evidence) {
        Evidence core = evidence;
        List<String> names = new ArrayList<>();
        for (String finding : evidence.findings().keySet().stream().sorted().toList()) {
            Evidence without = core.withoutFinding(finding);
            if (solve(without).possible()) {
                names.add(finding);
            } else {
                core = without;
            }
        }
        for (String item : evidence.items().keySet().stream().sorted().toList()) {
            Evidence without = core.withoutItem(item);
            if (solve(without).possible()) {
                names.add(item);
            } else {
                core = without;
            }
        }
        return names;
    }

    /**
     * P(finding present | exactly these items have failed).
     *
     * @param pattern bits by position in {@link #items}
     * @throws IllegalArgumentException for a finding that the catalogue does not know
     */
    public double findingChance(String finding, BitSet pattern) {
        NoisyOr or = model.finding(finding);
        double silent = 1 - or.leak();
        for (int k = 0; k < or.causes().length; k++) {
            if (pattern.get(or.causes()[k])) {
                silent *= 1 - or.chances()[k];
            }
        }
        return 1 - silent;
    }

    ExactPosterior solve(Evidence evidence) {
        return ExactPosterior.of(model, evidence, BucketTree.WIDTH_GUARD).orElseThrow();
    }

    FailureModel model() {
        return model;
    }

    ExactPosterior prior() {
        return prior;
    }

    double priorChance(String finding) {
        return prior.chance(model.finding(finding));
    }
}
