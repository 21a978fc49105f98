package worthsaving.diagnosis.inference;

import java.util.Arrays;
import java.util.List;

/** Sums the variables out one by one and keeps what the way back needs. */
final class UpwardPass {

    private static final double[] NO_WEIGHT = {1, 1};

    private final BucketTree tree;
    private final List<Table> tables;
    private final double[][] joints;
    private final double[][] messages;
    private final double[][][] before;
    private final double[] scales;
    private final double logPartition;

    UpwardPass(BucketTree tree, List<Table> tables) {
        this.tree = tree;
        this.tables = tables;
        int n = tree.size();
        joints = new double[n][];
        messages = new double[n][];
        before = new double[n][][];
        scales = new double[n];
        double log = 0;
        for (int k = 0; k < n && log > Double.NEGATIVE_INFINITY; k++) {
            joints[k] = product(k);
            log += Math.log(sumOut(k));
        }
        logPartition = log;
    }

    private double[] product(int k) {
        BucketTree.Bucket bucket = tree.bucket(k);
        double[] joint = new double[bucket.entries()];
        boolean empty = bucket.merges().length == 0;
        if (!empty) {
            gather(k, bucket, joint);
        }
        for (int s = 0; s < bucket.sources().length; s++) {
            multiply(joint, incoming(bucket.sources()[s]), bucket.sourceIndex()[s], empty);
            empty = false;
        }
        if (empty) {
            Arrays.fill(joint, 1);
        }
        return joint;
    }

    private void gather(int k, BucketTree.Bucket bucket, double[] joint) {
        Merge[] merges = bucket.merges();
        before[k] = new double[merges.length + 1][];
        for (int i : merges[0].base()) {
            joint[i] = 1;
        }
        for (int m = 0; m < merges.length; m++) {
            before[k][m] = m == 0 ? null : joint.clone();
            merges[m].apply(joint, incoming(merges[m].source()));
        }
        before[k][merges.length] = bucket.sources().length == 0 ? joint : joint.clone();
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

    /** @return the largest sum, which the message was divided by */
    private double sumOut(int k) {
        double[] joint = joints[k];
        double[] weight = outcome(k);
        double[] sum = new double[joint.length / 2];
        double largest = 0;
        for (int s = 0; s < sum.length; s++) {
            sum[s] = weight[0] * joint[2 * s] + weight[1] * joint[2 * s + 1];
            largest = Math.max(largest, sum[s]);
        }
        double scale = 1 / largest;
        for (int s = 0; s < sum.length; s++) {
            sum[s] *= scale;
        }
        scales[k] = scale;
        messages[k] = sum;
        return largest;
    }

    /** Weight of a bucket's own variable for no and for yes: that of the outcome of an OR, else 1. */
    double[] outcome(int k) {
        int table = tree.bucket(k).outcome();
        return table < 0 ? NO_WEIGHT : tables.get(table).values();
    }

    /** Values of a table, or of the message of a bucket. */
    double[] incoming(int source) {
        return source >= 0 ? tables.get(source).values() : messages[~source];
    }

    int[] scope(int table) {
        return tables.get(table).scope();
    }

    /** Product of all that came into a bucket, over own variable and separator. */
    double[] joint(int k) {
        return joints[k];
    }

    double[] message(int k) {
        return messages[k];
    }

    /**
     * What a bucket had gathered before the m-th merge, null where nothing but ones; after all of them for
     * m = their number.
     */
    double[] before(int k, int m) {
        return before[k][m];
    }

    /** What the sum of bucket k was multiplied by to give its message. */
    double scale(int k) {
        return scales[k];
    }

    /** Natural logarithm of the sum over all states; minus infinity when it is zero. */
    double logPartition() {
        return logPartition;
    }
}
