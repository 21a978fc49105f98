package worthsaving.valuation;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import smile.base.cart.InternalNode;
import smile.base.cart.Loss;
import smile.base.cart.Node;
import smile.base.cart.RegressionNode;
import smile.data.DataFrame;
import smile.data.Tuple;
import smile.data.formula.Formula;
import smile.data.type.StructType;
import smile.data.vector.DoubleVector;
import smile.regression.GradientTreeBoost;
import smile.regression.RegressionTree;

/**
 * Boosted trees of least absolute deviation by Smile (Friedman 2001), whose leaves are true medians. All rows are
 * used for every tree, so nothing is random.
 */
final class SmileBoosting {

    /** Stands for not stated; below every value that a column can take, so that it always goes first. */
    private static final float MISSING = -1e9f;

    private static final int DEPTH = 20;

    private SmileBoosting() {}

    /**
     * @param leaves of a tree at most
     * @param leastLeaf rows in a leaf at least
     */
    static TreeEnsemble fit(
            Boosting.Rows rows, float[] y, int trees, int leaves, double shrinkage, int leastLeaf) {
        int width = rows.types().length;
        double[][] x = new double[y.length][width];
        double[] target = new double[y.length];
        for (int i = 0; i < y.length; i++) {
            target[i] = y[i];
            for (int j = 0; j < width; j++) {
                float v = rows.x()[i * width + j];
                x[i][j] = Float.isNaN(v) ? MISSING : v;
            }
        }
        String[] names = new String[width];
        Arrays.setAll(names, j -> "f" + j);
        DataFrame columns = DataFrame.of(x, names);
        DataFrame all = columns.merge(DoubleVector.of("y", target));
        GradientTreeBoost fitted = GradientTreeBoost.fit(
                Formula.lhs("y"), all, Loss.lad(), trees, DEPTH, leaves, leastLeaf, shrinkage, 1);
        double intercept = fitted.predict(all.get(0)) - sum(fitted.trees(), all.get(0), shrinkage);
        return new Export(columns.schema(), shrinkage).of(fitted.trees(), intercept);
    }

    private static double sum(RegressionTree[] trees, Tuple row, double shrinkage) {
        return Arrays.stream(trees).mapToDouble(t -> shrinkage * t.predict(row)).sum();
    }

    /** Smile's trees as plain arrays. */
    private static final class Export {
        private final StructType schema;
        private final double shrinkage;
        private final List<Integer> shape = new ArrayList<>();
        private final List<Float> value = new ArrayList<>();

        private Export(StructType schema, double shrinkage) {
            this.schema = schema;
            this.shrinkage = shrinkage;
        }

        private TreeEnsemble of(RegressionTree[] trees, double intercept) {
            leaf(intercept);
            for (RegressionTree tree : trees) {
                preorder(tree.root());
            }
            float[] values = new float[value.size()];
            for (int i = 0; i < values.length; i++) {
                values[i] = value.get(i);
            }
            return new TreeEnsemble(
                    shape.stream().mapToInt(s -> s).toArray(), values, new long[0][], schema.length());
        }

        private void leaf(double v) {
            shape.add(TreeEnsemble.LEAF);
            value.add((float) v);
        }

        private void preorder(Node node) {
            if (node instanceof RegressionNode leaf) {
                leaf(shrinkage * leaf.output());
                return;
            }
            InternalNode split = (InternalNode) node;
            shape.add(4 * split.feature() + 1);
            value.add(Math.nextUp(threshold(split)));
            preorder(split.trueChild());
            preorder(split.falseChild());
        }

        /**
         * The greatest float that goes to the true child. Smile does not tell a split's threshold, so it is found
         * by halving over the order of floats: exact, since the columns are floats.
         */
        private float threshold(InternalNode split) {
            long low = ordinal(MISSING);
            long high = ordinal(-MISSING);
            while (high - low > 1) {
                long middle = low + (high - low) / 2;
                double[] probe = new double[schema.length()];
                Arrays.fill(probe, ofOrdinal((int) middle));
                if (split.branch(Tuple.of(probe, schema))) {
                    low = middle;
                } else {
                    high = middle;
                }
            }
            return ofOrdinal((int) low);
        }

        /** Floats numbered in their order, around 0. */
        private static int ordinal(float v) {
            int bits = Float.floatToIntBits(v);
            return bits >= 0 ? bits : -(bits & Integer.MAX_VALUE);
        }

        private static float ofOrdinal(int ordinal) {
            return ordinal >= 0 ? Float.intBitsToFloat(ordinal) : -Float.intBitsToFloat(-ordinal);
        }
    }
}
