package worthsaving.ranking;

import java.util.Arrays;
import java.util.List;
import java.util.OptionalInt;

/**
 * Finds which of many points dominates another: no greater in any figure and less in one, differences within a
 * hundredth counting as none.
 *
 * <p>The points stand in order under a binary tree whose nodes know the least of each figure below them, so that the
 * search for the first answer skips what cannot hold one and ends at once where it finds one.
 */
final class Dominance {

    private static final double LEVEL = 0.01;
    private static final int LEAF = 8;

    private final List<double[]> points;
    private final Node root;

    /** @param points in order; all have as many figures */
    Dominance(List<double[]> points) {
        this.points = List.copyOf(points);
        this.root = points.isEmpty() ? null : new Node(0, points.size());
    }

    /** Lowest number of a point that dominates this one; a point never dominates itself. */
    OptionalInt firstOver(double[] point) {
        double[] most = new double[point.length];
        double[] less = new double[point.length];
        for (int d = 0; d < point.length; d++) {
            double x = point[d];
            most[d] = x >= 0 ? x / (1 - LEVEL) : x * (1 - LEVEL);
            less[d] = x >= 0 ? x * (1 - LEVEL) : x / (1 - LEVEL);
        }
        int first = root == null ? -1 : root.first(most, less);
        return first < 0 ? OptionalInt.empty() : OptionalInt.of(first);
    }

    private static boolean dominates(double[] point, double[] most, double[] less) {
        boolean better = false;
        for (int d = 0; d < point.length; d++) {
            if (point[d] > most[d]) {
                return false;
            }
            better |= point[d] < less[d];
        }
        return better;
    }

    private final class Node {
        private final int from;
        private final int to;
        private final double[] least;
        private final Node left;
        private final Node right;

        Node(int from, int to) {
            this.from = from;
            this.to = to;
            boolean leaf = to - from <= LEAF;
            left = leaf ? null : new Node(from, (from + to) / 2);
            right = leaf ? null : new Node((from + to) / 2, to);
            least = new double[points.get(from).length];
            Arrays.fill(least, Double.POSITIVE_INFINITY);
            for (int i = from; i < to; i++) {
                for (int d = 0; d < least.length; d++) {
                    least[d] = Math.min(least[d], points.get(i)[d]);
                }
            }
        }

        /** The first number in here that answers; below zero when none does. */
        int first(double[] most, double[] less) {
            if (!dominates(least, most, less)) {
                return -1;
            }
            for (int i = from; left == null && i < to; i++) {
                if (dominates(points.get(i), most, less)) {
                    return i;
                }
            }
            int first = left == null ? -1 : left.first(most, less);
            return first >= 0 || left == null ? first : right.first(most, less);
        }
    }
}
