package worthsaving.diagnosis.inference;

import java.util.BitSet;
import java.util.function.IntToLongFunction;

/**
 * Draws exact joint states by inverse transform, last eliminated variable first. An OR's outcome is
 * drawn too, and then which side of each merge contributed to it.
 */
public final class JointDraw {

    /** Where the numbers in [0, 1) come from; the same label gets the same number within a draw. */
    public interface Uniforms {

        double forVariable(int variable);

        double forHidden(long label);
    }

    private static final long FACTOR = 0x9e3779b97f4a7c15L;

    private final Calibrated chain;
    private final BucketTree tree;
    private final UpwardPass up;
    private final boolean[] hidden;
    private final long[][] labels;

    /**
     * @param named variables below this number get their own uniform, all others a hidden one
     * @param label of every variable, stable under changes elsewhere in the network
     */
    public JointDraw(Calibrated chain, int named, IntToLongFunction label) {
        this.chain = chain;
        tree = chain.tree();
        up = chain.up();
        hidden = new boolean[tree.size()];
        labels = new long[tree.size()][];
        for (int k = 0; k < tree.size(); k++) {
            BucketTree.Bucket bucket = tree.bucket(k);
            hidden[k] = bucket.variable() >= named;
            labels[k] = new long[bucket.merges().length + 1];
            labels[k][0] = label.applyAsLong(bucket.variable());
            for (int m = 0; m < bucket.merges().length; m++) {
                labels[k][m + 1] = FACTOR * (labels[k][0] + FACTOR * sourceLabel(bucket.merges()[m], label));
            }
        }
    }

    private long sourceLabel(Merge merge, IntToLongFunction label) {
        if (merge.source() < 0) {
            return label.applyAsLong(tree.bucket(~merge.source()).variable());
        }
        long sum = 1;
        for (int variable : up.scope(merge.source())) {
            sum = FACTOR * (sum + label.applyAsLong(variable));
        }
        return sum;
    }

    /** The variables that are yes. */
    public BitSet draw(Uniforms uniforms) {
        int n = tree.size();
        BitSet yes = new BitSet(n);
        boolean[] state = new boolean[n];
        int[] contributed = new int[n];
        for (int k = n - 1; k >= 0; k--) {
            BucketTree.Bucket bucket = tree.bucket(k);
            int separator = contributed[k];
            for (int b = 0; b < bucket.separator().length; b++) {
                if (state[bucket.separator()[b]]) {
                    separator |= 1 << b;
                }
            }
            double u = hidden[k] ? uniforms.forHidden(labels[k][0]) : uniforms.forVariable(bucket.variable());
            boolean on = u < chain.conditional(k, separator);
            if (on) {
                yes.set(bucket.variable());
            }
            state[k] = on && bucket.outcome() < 0;
            int at = 2 * separator + (on ? 1 : 0);
            for (int m = bucket.merges().length - 1; m >= 0; m--) {
                Merge merge = bucket.merges()[m];
                int[] split = merge.split(
                        up.before(k, m), up.incoming(merge.source()), at, uniforms.forHidden(labels[k][m + 1]));
                at = split[0];
                if (merge.source() < 0) {
                    contributed[~merge.source()] = split[1];
                }
            }
        }
        return yes;
    }
}
