package worthsaving.ranking;

import java.util.Comparator;
import java.util.List;
import java.util.OptionalInt;
import java.util.stream.IntStream;

/**
 * Finds which of many points dominates another: no greater in any figure and less in one, differences within a
 * hundredth counting as none.
 *
 * <p>A k-d tree (Bentley 1975, Communications of the ACM 18:509) whose nodes know the box and the first number of
 * their points, so that a question skips every box that cannot hold an earlier answer.
 */
final class Dominance {

    private static final double LEVEL = 0.01;
    private static final int LEAF = 8;

    private final List<double[]> points;
    private final Node root;

    /** @param points by number; all have as many figures */
    Dominance(List<double[]> points) {
        this.points = List.copyOf(points);
        this.root = points.isEmpty() ? null : new Node(IntStream.range(0, points.size()).toArray(), 0);
    }

    /** Lowest number of a point that dominates this one; a point never dominates itself. */
    OptionalInt firstOver(double[] point) {
        if (root == null) {
            return OptionalInt.empty();
        }
        double[] most = new double[point.length];
        double[] less = new double[point.length];
        for (int d = 0; d < point.length; d++) {
            double x = point[d];
            most[d] = x >= 0 ? x / (1 - LEVEL) : x * (1 - LEVEL);
            less[d] = x >= 0 ? x * (1 - LEVEL) : x / (1 - LEVEL);
        }
        int first = root.first(most, less, Integer.MAX_VALUE);
        return first == Integer.MAX_VALUE ? OptionalInt.empty() : OptionalInt.of(first);
    }

    private static boolean within(double[] point, double[] most) {
        for (int d = 0; d < point.length; d++) {
            if (point[d] > most[d]) {
                return false;
            }
        }
        return true;
    }

    private static boolean lessInOne(double[] point, double[] less) {
        for (int d = 0; d < point.length; d++) {
            if (point[d] < less[d]) {
                return true;
            }
        }
        return false;
    }

    private final class Node {
        private final int[] numbers;
        private final int earliest;
        private final double[] corner;
        private final Node left;
        private final Node right;

        Node(int[] numbers, int depth) {
            this.numbers = numbers;
            this.earliest = IntStream.of(numbers).min().orElseThrow();
            int figures = points.get(numbers[0]).length;
            this.corner = points.get(numbers[0]).clone();
            for (int i : numbers) {
                for (int d = 0; d < figures; d++) {
                    corner[d] = Math.min(corner[d], points.get(i)[d]);
                }
            }
            if (numbers.length <= LEAF) {
                left = null;
                right = null;
                return;
            }
            int axis = depth % figures;
            int[] sorted = IntStream.of(numbers).boxed()
                    .sorted(Comparator.comparingDouble(i -> points.get(i)[axis]))
                    .mapToInt(Integer::intValue).toArray();
            int middle = sorted.length / 2;
            left = new Node(IntStream.range(0, middle).map(k -> sorted[k]).toArray(), depth + 1);
            right = new Node(IntStream.range(middle, sorted.length).map(k -> sorted[k]).toArray(), depth + 1);
        }

        /** The lower of {@code known} and the first number in here that answers. */
        int first(double[] most, double[] less, int known) {
            if (earliest >= known || !within(corner, most) || !lessInOne(corner, less)) {
                return known;
            }
            int best = known;
            if (left == null) {
                for (int i : numbers) {
                    double[] point = points.get(i);
                    best = i < best && within(point, most) && lessInOne(point, less) ? i : best;
                }
                return best;
            }
            Node sooner = left.earliest < right.earliest ? left : right;
            best = sooner.first(most, less, best);
            return (sooner == left ? right : left).first(most, less, best);
        }
    }
}
