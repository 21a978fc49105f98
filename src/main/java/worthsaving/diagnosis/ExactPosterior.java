package worthsaving.diagnosis;

import java.util.Arrays;
import java.util.Optional;
import java.util.function.IntPredicate;
import worthsaving.diagnosis.inference.BucketTree;
import worthsaving.diagnosis.inference.Calibrated;
import worthsaving.diagnosis.inference.Factors;
import worthsaving.diagnosis.inference.NoisyOr;
import worthsaving.diagnosis.inference.TableList;

/** Model, evidence and the calibrated tree over them. */
final class ExactPosterior {

    private final TableList written;
    private final Factors factors;
    private final BucketTree tree;
    private final Calibrated chain;

    private ExactPosterior(TableList written, Factors factors, BucketTree tree) {
        this.written = written;
        this.factors = factors;
        this.tree = tree;
        this.chain = tree.calibrate(factors.tables());
    }

    /** Empty when the width guard refuses. */
    static Optional<ExactPosterior> of(FailureModel model, Evidence evidence, int guard) {
        TableList written = EvidenceTables.of(model, evidence, TableList.DEFAULT_FAN_IN);
        Factors factors = written.factors();
        return BucketTree.compile(factors, new int[factors.variables()], guard)
                .map(tree -> new ExactPosterior(written, factors, tree));
    }

    boolean possible() {
        return logWeight() != Double.NEGATIVE_INFINITY;
    }

    /** Logarithm of P(evidence, at most one of each exclusive group). */
    double logWeight() {
        return chain.logPartition() + written.logConstant();
    }

    double marginal(int item) {
        return chain.marginal(item);
    }

    /** P(finding present), by one upward pass with it absent. */
    double chance(NoisyOr finding) {
        double absent = tree.logPartition(EvidenceTables.withAbsent(factors.tables(), finding)) - chain.logPartition();
        double chance = 1 - (1 - finding.leak()) * Math.exp(absent);
        return Math.max(0, Math.min(1, chance));
    }

    /**
     * The same posterior as a chain in which the variables chosen come first.
     *
     * @return empty when the width guard refuses
     */
    Optional<Calibrated> chainOf(IntPredicate first, int guard) {
        int[] stage = new int[factors.variables()];
        Arrays.setAll(stage, v -> first.test(v) ? 1 : 0);
        return BucketTree.compile(factors, stage, guard).map(t -> t.calibrate(factors.tables()));
    }

    long hiddenLabel(int variable) {
        return written.hiddenLabel(variable);
    }

    /** The posterior as a chain of all variables, hidden ones among them. */
    Calibrated chain() {
        return chain;
    }
}
