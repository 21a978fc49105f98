package worthsaving.valuation;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * A sum of regression trees over a vector of floats, NaN for not stated. Immutable.
 *
 * <p>Nodes lie in preorder in two arrays, tree after tree. {@code shape} is -1 at a leaf, else
 * 4 x feature + 2 x (1 if the test is for a set of codes) + (1 if not-stated goes first). {@code value} is the
 * leaf's value, the threshold (smaller goes first), or the number of the set (members go first).
 */
final class TreeEnsemble {

    static final int LEAF = -1;

    /** No trees: 0 for every vector. */
    static final TreeEnsemble NONE = new TreeEnsemble(new int[0], new float[0], new long[0][], 0);

    private final int[] shape;
    private final float[] value;
    private final long[][] sets;
    private final int[] second;
    private final int[] roots;
    private final int features;

    /**
     * @param sets sets of codes as bits, 64 to a word
     * @param features width of the vectors, for checking
     * @throws IllegalArgumentException when the arrays are no whole trees
     */
    TreeEnsemble(int[] shape, float[] value, long[][] sets, int features) {
        if (shape.length != value.length) {
            throw new IllegalArgumentException("trees have " + shape.length + " nodes but " + value.length + " values");
        }
        this.shape = shape;
        this.value = value;
        this.sets = sets;
        this.features = features;
        this.second = new int[shape.length];
        int[] start = new int[shape.length];
        int[] open = new int[shape.length + 1];
        int trees = 0;
        int depth = 0;
        for (int node = 0; node < shape.length; node++) {
            check(node);
            if (depth == 0) {
                start[trees++] = node;
            }
            open[depth++] = node;
            if (shape[node] == LEAF) {
                depth = closeFinished(open, depth - 1, node);
            }
        }
        if (depth != 0) {
            throw new IllegalArgumentException("the last tree is cut short");
        }
        roots = Arrays.copyOf(start, trees);
    }

    /** The mean of some, of which there is at least one. */
    static TreeEnsemble mean(List<TreeEnsemble> some) {
        if (some.size() == 1) {
            return some.get(0);
        }
        int nodes = some.stream().mapToInt(one -> one.shape.length).sum();
        int[] shape = new int[nodes];
        float[] value = new float[nodes];
        List<long[]> sets = new ArrayList<>();
        int at = 0;
        for (TreeEnsemble one : some) {
            for (int node = 0; node < one.shape.length; node++, at++) {
                shape[at] = one.shape[node];
                value[at] = one.shape[node] == LEAF ? one.value[node] / some.size()
                        : one.value[node] + (one.tests(node) ? sets.size() : 0);
            }
            sets.addAll(Arrays.asList(one.sets));
        }
        return new TreeEnsemble(shape, value, sets.toArray(long[][]::new), some.get(0).features);
    }

    private void check(int node) {
        boolean sound = shape[node] >= LEAF && shape[node] < 4 * features && Float.isFinite(value[node]);
        if (sound && tests(node)) {
            sound = value[node] >= 0 && value[node] < sets.length && value[node] == (int) value[node];
        }
        if (!sound) {
            throw new IllegalArgumentException("tree node " + node + " is damaged");
        }
    }

    /** After a leaf: splits whose second branch is done close; the next innermost one gets the next node. */
    private int closeFinished(int[] open, int splitsOpen, int leaf) {
        int depth = splitsOpen;
        while (depth > 0 && second[open[depth - 1]] != 0) {
            depth--;
        }
        if (depth > 0) {
            second[open[depth - 1]] = leaf + 1;
        }
        return depth;
    }

    /** Whether a node tests for a set. */
    private boolean tests(int node) {
        return shape[node] != LEAF && (shape[node] & 2) != 0;
    }

    double predict(float[] x) {
        return predict(x, 0);
    }

    /** Sum of the trees for the vector that begins at {@code at}. */
    double predict(float[] x, int at) {
        double sum = 0;
        for (int root : roots) {
            int node = root;
            while (shape[node] != LEAF) {
                node = goesFirst(node, x[at + (shape[node] >> 2)]) ? node + 1 : second[node];
            }
            sum += value[node];
        }
        return sum;
    }

    private boolean goesFirst(int node, float v) {
        if (Float.isNaN(v)) {
            return (shape[node] & 1) != 0;
        }
        if ((shape[node] & 2) == 0) {
            return v < value[node];
        }
        long[] set = sets[(int) value[node]];
        int code = (int) v;
        return code >> 6 < set.length && (set[code >> 6] >> (code & 63) & 1) != 0;
    }

    int trees() {
        return roots.length;
    }

    int[] shape() {
        return shape.clone();
    }

    float[] values() {
        return value.clone();
    }

    long[][] sets() {
        return Arrays.stream(sets).map(long[]::clone).toArray(long[][]::new);
    }
}
