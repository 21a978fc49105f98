package worthsaving.diagnosis.inference;

/**
 * The joint distribution as a chain: each bucket holds its variable given its separator, and a separator
 * holds only variables that were eliminated later. From it come every single marginal, exact draws and
 * the best joint states.
 */
public final class Calibrated {

    private final BucketTree tree;
    private final UpwardPass up;
    /** Null until asked for: draws and stories need none. */
    private volatile double[] marginals;

    Calibrated(BucketTree tree, UpwardPass up) {
        this.tree = tree;
        this.up = up;
    }

    /**
     * Chain rule from the partition function back to every message; value times derivative of a message
     * is the probability of its separator's state. All numbers are non-negative, so nothing cancels.
     */
    private double[] downward() {
        double[] marginals = new double[tree.size()];
        if (!possible()) {
            return marginals;
        }
        double[][] derivatives = new double[tree.size()][];
        for (int k = tree.size() - 1; k >= 0; k--) {
            BucketTree.Bucket bucket = tree.bucket(k);
            double[] derivative = derivatives[k] == null ? new double[] {1} : derivatives[k];
            double[] weight = up.outcome(k);
            double[] belief = up.joint(k).clone();
            double yes = 0;
            for (int s = 0; s < derivative.length; s++) {
                double scaled = derivative[s] * up.scale(k);
                belief[2 * s] *= scaled * weight[0];
                belief[2 * s + 1] *= scaled * weight[1];
                yes += belief[2 * s + 1];
            }
            marginals[bucket.variable()] = Math.min(1, yes);
            for (int s = 0; s < bucket.sources().length; s++) {
                if (bucket.sources()[s] < 0) {
                    int child = ~bucket.sources()[s];
                    derivatives[child] = derivative(belief, bucket.sourceIndex()[s], up.message(child));
                }
            }
            if (bucket.merges().length > 0) {
                throughMerges(k, bucket, belief, derivatives);
            }
            derivatives[k] = null;
        }
        return marginals;
    }

    private static double[] derivative(double[] belief, int[] index, double[] message) {
        double[] derivative = new double[message.length];
        for (int i = 0; i < belief.length; i++) {
            derivative[index[i]] += belief[i];
        }
        for (int s = 0; s < derivative.length; s++) {
            derivative[s] = message[s] > 0 ? derivative[s] / message[s] : 0;
        }
        return derivative;
    }

    private void throughMerges(int k, BucketTree.Bucket bucket, double[] belief, double[][] derivatives) {
        Merge[] merges = bucket.merges();
        double[] gathered = up.before(k, merges.length);
        double[] derivative = belief;
        for (int i = 0; i < derivative.length; i++) {
            derivative[i] = gathered[i] > 0 ? belief[i] / gathered[i] : 0;
        }
        int lastMessage = merges.length - 1;
        int firstMessage = 0;
        while (firstMessage < merges.length && merges[firstMessage].source() >= 0) {
            firstMessage++;
        }
        for (int m = lastMessage; m >= firstMessage; m--) {
            double[] incoming = up.incoming(merges[m].source());
            double[] into = new double[incoming.length];
            merges[m].back(up.before(k, m), incoming, derivative, into);
            if (merges[m].source() < 0) {
                derivatives[~merges[m].source()] = into;
            }
        }
    }

    /** Natural logarithm of the sum of the product of all tables; minus infinity when it is zero. */
    public double logPartition() {
        return up.logPartition();
    }

    public boolean possible() {
        return logPartition() != Double.NEGATIVE_INFINITY;
    }

    /** P(variable = yes); for an OR, that some table contributed to it. */
    public double marginal(int variable) {
        double[] known = marginals;
        if (known == null) {
            known = downward();
            marginals = known;
        }
        return known[variable];
    }

    public int variables() {
        return tree.size();
    }

    /** The variable that comes {@code rank}-th when states are built up one variable at a time. */
    public int variableAt(int rank) {
        return tree.bucket(tree.size() - 1 - rank).variable();
    }

    /**
     * P(the {@code rank}-th variable = yes | the variables of lower rank), where none of lower rank is an
     * OR.
     *
     * @param state bits by rank; only lower ranks are read
     */
    public double conditional(int rank, long[] state) {
        int last = tree.size() - 1;
        int[] separator = tree.bucket(last - rank).separator();
        int index = 0;
        for (int b = 0; b < separator.length; b++) {
            int at = last - separator[b];
            index |= (int) (state[at >> 6] >>> at & 1) << b;
        }
        return conditional(last - rank, index);
    }

    /** Greatest probability of either state of the {@code rank}-th variable, whatever those of lower rank. */
    double likeliest(int rank) {
        int k = tree.size() - 1 - rank;
        double[] joint = up.joint(k);
        double[] weight = up.outcome(k);
        double most = 0;
        for (int s = 0; s < joint.length && most < 1; s += 2) {
            double no = weight[0] * joint[s];
            double yes = weight[1] * joint[s + 1];
            most = no + yes > 0 ? Math.max(most, Math.max(no, yes) / (no + yes)) : most;
        }
        return most;
    }

    /** P(own variable = yes | a state of the separator). */
    double conditional(int k, int separatorState) {
        double[] joint = up.joint(k);
        double[] weight = up.outcome(k);
        double yes = weight[1] * joint[2 * separatorState + 1];
        double either = yes + weight[0] * joint[2 * separatorState];
        return either > 0 ? yes / either : 0;
    }

    BucketTree tree() {
        return tree;
    }

    UpwardPass up() {
        return up;
    }
}
