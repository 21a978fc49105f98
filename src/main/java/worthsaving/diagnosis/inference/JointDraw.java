package worthsaving.diagnosis.inference;

import java.util.Arrays;
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

    private static final int[] NONE = {};

    /** The buckets below hold hidden variables only. */
    private final int lowest;
    private final BucketTree tree;
    private final UpwardPass up;
    private final boolean[] hidden;
    private final int[] variables;
    /** By bucket: P(own variable = yes | a state of the separator). */
    private final double[][] conditionals;
    /** By bucket of a plain variable: the buckets that have it in their separators, and as which bit. */
    private final int[][] users;
    private final int[][] userBits;
    private final long[] labels;
    private final MergeDraw[][] merges;
    /** By bucket: the bits of all ORs that its merges tell of; while none of them is yes there is nothing to split. */
    private final int[] spoken;

    /**
     * @param named variables below this number get their own uniform, all others a hidden one
     * @param label of every variable, stable under changes elsewhere in the network
     */
    public JointDraw(Calibrated chain, int named, IntToLongFunction label) {
        tree = chain.tree();
        up = chain.up();
        hidden = new boolean[tree.size()];
        labels = new long[tree.size()];
        merges = new MergeDraw[tree.size()][];
        spoken = new int[tree.size()];
        variables = new int[tree.size()];
        conditionals = new double[tree.size()][];
        users = new int[tree.size()][];
        userBits = new int[tree.size()][];
        Arrays.fill(users, NONE);
        Arrays.fill(userBits, NONE);
        int lowestNamed = tree.size();
        for (int k = 0; k < tree.size(); k++) {
            BucketTree.Bucket bucket = tree.bucket(k);
            int own = k;
            variables[k] = bucket.variable();
            conditionals[k] = new double[1 << bucket.separator().length];
            Arrays.setAll(conditionals[k], state -> chain.conditional(own, state));
            for (int b = 0; b < bucket.separator().length; b++) {
                int other = bucket.separator()[b];
                if (tree.bucket(other).outcome() < 0) {
                    users[other] = append(users[other], k);
                    userBits[other] = append(userBits[other], 1 << b);
                }
            }
            hidden[k] = bucket.variable() >= named;
            lowestNamed = hidden[k] || lowestNamed < k ? lowestNamed : k;
            labels[k] = label.applyAsLong(bucket.variable());
            merges[k] = new MergeDraw[bucket.merges().length];
            for (int m = 0; m < merges[k].length; m++) {
                Merge merge = bucket.merges()[m];
                merges[k][m] = new MergeDraw(merge, up.before(k, m), up.incoming(merge.source()),
                        FACTOR * (labels[k] + FACTOR * sourceLabel(merge, label)));
                spoken[k] |= merge.ors();
            }
        }
        lowest = lowestNamed;
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

    private static int[] append(int[] to, int more) {
        int[] longer = Arrays.copyOf(to, to.length + 1);
        longer[to.length] = more;
        return longer;
    }

    /** The named variables that are yes, and perhaps some hidden ones. */
    public BitSet draw(Uniforms uniforms) {
        int n = variables.length;
        BitSet yes = new BitSet(n);
        int[] separators = new int[n];
        for (int k = n - 1; k >= lowest; k--) {
            double u = hidden[k] ? uniforms.forHidden(labels[k]) : uniforms.forVariable(variables[k]);
            boolean on = u < conditionals[k][separators[k]];
            if (on) {
                yes.set(variables[k]);
                for (int s = 0; s < users[k].length; s++) {
                    separators[users[k][s]] |= userBits[k][s];
                }
            }
            int at = 2 * separators[k] + (on ? 1 : 0);
            for (int m = merges[k].length - 1; m >= 0 && (at & spoken[k]) != 0; m--) {
                long split = merges[k][m].draw(at, uniforms);
                at = (int) (split >> Integer.SIZE);
                if (merges[k][m].source() < 0) {
                    separators[~merges[k][m].source()] |= (int) split;
                }
            }
        }
        return yes;
    }
}
