package worthsaving.inspection;

import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;
import worthsaving.deal.BuyerRule;
import worthsaving.deal.PatternProfit;
import worthsaving.deal.WayOut;

/** What the best action brings on a share of the failure patterns, in flat arrays. */
final class Gains {

    /** Differences of sums that are this small a part of the sums are rounding. */
    private static final double ROUNDING = 1e-12;

    private final double target;
    private final double[] weights;
    /** By open way out and pattern: weight times profit; null where every pattern brings the same. */
    private final double[][] weighted;
    /** By open way out: the profit where it is the same. */
    private final double[] same;
    private final double allWeight;
    private final double[] allProfit;
    private final Best now;

    Gains(List<PatternProfit> patterns, BuyerRule rule) {
        target = rule.targetProfit().amount();
        weights = patterns.stream().mapToDouble(PatternProfit::weight).toArray();
        double[][] profits = Arrays.stream(WayOut.values())
                .filter(way -> way != WayOut.WALK_AWAY && rule.ways().contains(way))
                .map(way -> patterns.stream().mapToDouble(p -> p.profit()[way.ordinal()]).toArray())
                .toArray(double[][]::new);
        same = Arrays.stream(profits).mapToDouble(p -> p[0]).toArray();
        weighted = Arrays.stream(profits).map(this::weighted).toArray(double[][]::new);
        double[] all = new double[weights.length];
        Arrays.fill(all, 1);
        allWeight = dot(weights, all);
        allProfit = IntStream.range(0, same.length).mapToDouble(way -> profit(way, allWeight, all)).toArray();
        now = best(allWeight, allProfit);
    }

    /** On everything. */
    Best now() {
        return now;
    }

    /**
     * The best action on a share of the probability and on the rest of it; sums, not means, so that the two add up.
     *
     * @param shares by pattern, 0 to 1
     */
    Split split(double[] shares) {
        double weight = dot(weights, shares);
        double[] profit = new double[same.length];
        double[] rest = new double[same.length];
        for (int way = 0; way < profit.length; way++) {
            profit[way] = profit(way, weight, shares);
            rest[way] = allProfit[way] - profit[way];
        }
        return new Split(best(weight, profit), best(Math.max(0, allWeight - weight), rest));
    }

    /** Selling it as it stands, or for parts, brings the same whatever has failed. */
    private double[] weighted(double[] profit) {
        if (Arrays.stream(profit).allMatch(p -> p == profit[0])) {
            return null;
        }
        double[] product = new double[profit.length];
        Arrays.setAll(product, p -> weights[p] * profit[p]);
        return product;
    }

    private double profit(int way, double weight, double[] shares) {
        return weighted[way] == null ? same[way] * weight : dot(weighted[way], shares);
    }

    private Best best(double weight, double[] profit) {
        double most = Arrays.stream(profit).max().orElse(Double.NEGATIVE_INFINITY);
        return new Best(weight, most, Math.max(0, most - target * weight));
    }

    /** Four sums side by side, since one alone waits for each addition to end before it begins the next. */
    private static double dot(double[] a, double[] b) {
        double s0 = 0;
        double s1 = 0;
        double s2 = 0;
        double s3 = 0;
        int i = 0;
        for (; i + 3 < a.length; i += 4) {
            s0 += a[i] * b[i];
            s1 += a[i + 1] * b[i + 1];
            s2 += a[i + 2] * b[i + 2];
            s3 += a[i + 3] * b[i + 3];
        }
        for (; i < a.length; i++) {
            s0 += a[i] * b[i];
        }
        return s0 + s1 + (s2 + s3);
    }

    /**
     * @param present on the share
     * @param absent on the rest
     */
    record Split(Best present, Best absent) {

        /** What knowing is worth: never below zero, and zero where only rounding speaks for it. */
        double gainOver(Best now) {
            double gain = present.gain() + absent.gain() - now.gain();
            double scale = present.scale() + absent.scale();
            return gain > ROUNDING * scale ? gain : 0;
        }
    }

    /**
     * @param weight probability of the share
     * @param profit of the best open way out, summed over the share
     * @param gain over the target, or zero for leaving it
     */
    record Best(double weight, double profit, double gain) {

        boolean buys() {
            return gain > 0;
        }

        double expectedProfit() {
            return weight > 0 ? Math.max(0, profit / weight) : 0;
        }

        private double scale() {
            return Math.abs(profit) + weight;
        }
    }
}
