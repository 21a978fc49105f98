package worthsaving.inspection;

import java.util.Arrays;
import java.util.List;
import worthsaving.deal.BuyerRule;
import worthsaving.deal.PatternProfit;
import worthsaving.deal.WayOut;

/** What the best action brings on a share of the failure patterns, in flat arrays. */
final class Gains {

    private final double target;
    private final double[] weights;
    /** By open way out and pattern. */
    private final double[][] profits;
    private final Best now;

    Gains(List<PatternProfit> patterns, BuyerRule rule) {
        target = rule.targetProfit().amount();
        weights = patterns.stream().mapToDouble(PatternProfit::weight).toArray();
        profits = Arrays.stream(WayOut.values())
                .filter(way -> way != WayOut.WALK_AWAY && rule.ways().contains(way))
                .map(way -> patterns.stream().mapToDouble(p -> p.profit()[way.ordinal()]).toArray())
                .toArray(double[][]::new);
        double[] all = new double[weights.length];
        Arrays.fill(all, 1);
        now = best(all);
    }

    /** On everything. */
    Best now() {
        return now;
    }

    /**
     * The best action on a share of the probability; sums, not means, so that the shares add up.
     *
     * @param shares by pattern, 0 to 1
     */
    Best best(double[] shares) {
        double[] joint = new double[weights.length];
        double weight = 0;
        for (int i = 0; i < joint.length; i++) {
            joint[i] = weights[i] * shares[i];
            weight += joint[i];
        }
        double most = Double.NEGATIVE_INFINITY;
        for (double[] profit : profits) {
            double sum = 0;
            for (int i = 0; i < joint.length; i++) {
                sum += joint[i] * profit[i];
            }
            most = Math.max(most, sum);
        }
        return new Best(weight, most, Math.max(0, most - target * weight));
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
    }
}
