package worthsaving.diagnosis.inference;

import java.util.Arrays;
import java.util.List;

/**
 * The joint distribution in the form of a chain: P(x) = product over the buckets of
 * P(variable | separator), each separator holding only variables eliminated later. From it come every
 * single marginal, exact draws, and the best joint states.
 */
public final class Calibrated {

    private final BucketTree tree;
    private final double[][] yes;
    private final double[] marginals;
    private final double logPartition;

    private Calibrated(BucketTree tree, double[][] yes, double[] marginals, double logPartition) {
        this.tree = tree;
        this.yes = yes;
        this.marginals = marginals;
        this.logPartition = logPartition;
    }

    static Calibrated of(BucketTree tree, List<Table> tables) {
        double[][] yes = new double[tree.size()][];
        double logPartition = upward(tree, tables, yes);
        double[] marginals =
                logPartition == Double.NEGATIVE_INFINITY ? new double[0] : downward(tree, yes);
        return new Calibrated(tree, yes, marginals, logPartition);
    }

    /** Fills P(variable = yes | separator) per bucket. */
    static double upward(BucketTree tree, List<Table> tables, double[][] yes) {
        double[][] messages = new double[tree.size()][];
        double log = 0;
        for (int k = 0; k < tree.size(); k++) {
            BucketTree.Bucket bucket = tree.bucket(k);
            double[] joint = product(tree, k, tables, messages);
            int states = joint.length / 2;
            double[] sum = new double[states];
            double[] share = new double[states];
            double largest = 0;
            for (int s = 0; s < states; s++) {
                double both = joint[2 * s] + joint[2 * s + 1];
                share[s] = both > 0 ? joint[2 * s + 1] / both : 0;
                sum[s] = both;
                largest = Math.max(largest, both);
            }
            if (largest == 0) {
                return Double.NEGATIVE_INFINITY;
            }
            log += Math.log(largest);
            double scale = 1 / largest;
            for (int s = 0; s < states; s++) {
                sum[s] *= scale;
            }
            yes[k] = share;
            messages[k] = bucket.parent() < 0 ? null : sum;
        }
        return log;
    }

    private static double[] product(BucketTree tree, int k, List<Table> tables, double[][] messages) {
        BucketTree.Bucket bucket = tree.bucket(k);
        double[] joint = new double[bucket.entries()];
        boolean empty = true;
        for (int t = 0; t < bucket.tables().length; t++) {
            multiply(joint, tables.get(bucket.tables()[t]).values(), bucket.tableIndex()[t], empty);
            empty = false;
        }
        for (int child : tree.children(k)) {
            multiply(joint, messages[child], tree.bucket(child).indexInParent(), empty);
            messages[child] = null;
            empty = false;
        }
        if (empty) {
            Arrays.fill(joint, 1);
        }
        return joint;
    }

    private static void multiply(double[] joint, double[] values, int[] index, boolean first) {
        if (first) {
            for (int i = 0; i < joint.length; i++) {
                joint[i] = values[index[i]];
            }
        } else {
            for (int i = 0; i < joint.length; i++) {
                joint[i] *= values[index[i]];
            }
        }
    }

    private static double[] downward(BucketTree tree, double[][] yes) {
        double[] marginals = new double[tree.size()];
        double[][] separators = new double[tree.size()][];
        for (int k = tree.size() - 1; k >= 0; k--) {
            double[] share = yes[k];
            double[] separator = tree.bucket(k).parent() < 0 ? new double[] {1} : separators[k];
            double marginal = 0;
            for (int s = 0; s < share.length; s++) {
                marginal += separator[s] * share[s];
            }
            marginals[tree.bucket(k).variable()] = Math.min(1, marginal);
            int[] children = tree.children(k);
            if (children.length > 0) {
                double[] joint = new double[2 * share.length];
                for (int s = 0; s < share.length; s++) {
                    joint[2 * s + 1] = separator[s] * share[s];
                    joint[2 * s] = separator[s] * (1 - share[s]);
                }
                for (int child : children) {
                    separators[child] = sum(joint, tree.bucket(child));
                }
            }
            separators[k] = null;
        }
        return marginals;
    }

    private static double[] sum(double[] joint, BucketTree.Bucket child) {
        double[] onto = new double[1 << child.separator().length];
        int[] index = child.indexInParent();
        for (int i = 0; i < joint.length; i++) {
            onto[index[i]] += joint[i];
        }
        return onto;
    }

    /** Natural logarithm of the sum of the product of all tables; minus infinity when it is zero. */
    public double logPartition() {
        return logPartition;
    }

    public boolean possible() {
        return logPartition != Double.NEGATIVE_INFINITY;
    }

    /** P(variable = yes). */
    public double marginal(int variable) {
        return marginals[variable];
    }

    /** The variable that comes {@code rank}-th when states are built up one variable at a time. */
    public int variableAt(int rank) {
        return tree.bucket(tree.size() - 1 - rank).variable();
    }

    public int variables() {
        return tree.size();
    }

    /**
     * P(the {@code rank}-th variable = yes | the variables of lower rank).
     *
     * @param state bits by rank; only lower ranks are read
     */
    public double conditional(int rank, long[] state) {
        int last = tree.size() - 1;
        int k = last - rank;
        int[] separator = tree.bucket(k).separator();
        int index = 0;
        for (int b = 0; b < separator.length; b++) {
            int at = last - separator[b];
            index |= (int) (state[at >> 6] >>> at & 1) << b;
        }
        return yes[k][index];
    }
}
