package worthsaving.teardown;

import java.util.Arrays;
import worthsaving.teardown.Move.Kind;
import worthsaving.teardown.Prospect.End;

/** What the ends of a prospect are worth once something is known, looking no further. */
final class Conditional {

    private final Prospect prospect;
    private final double now;

    /**
     * @param weight probability of what is known
     * @param finish best money of finishing then
     * @param stop best money of stopping
     */
    record Values(double weight, double finish, double stop) {

        Kind kind() {
            return stop >= finish ? Kind.STOP : Kind.FINISH;
        }
    }

    Conditional(Prospect prospect) {
        this.prospect = prospect;
        double[] all = new double[prospect.weights().length];
        Arrays.fill(all, 1);
        this.now = best(all);
    }

    /** @param likelihood of what is seen, by pattern */
    Values values(double[] likelihood) {
        double weight = 0;
        for (int p = 0; p < likelihood.length; p++) {
            weight += prospect.weights()[p] * likelihood[p];
        }
        return new Values(weight, sum(Kind.FINISH, likelihood) / weight, sum(Kind.STOP, likelihood) / weight);
    }

    /**
     * What seeing one of several results is worth, its cost apart.
     *
     * @param likelihood by result and pattern
     */
    double gain(double[][] likelihood) {
        double sum = 0;
        for (double[] result : likelihood) {
            sum += best(result);
        }
        return Math.max(0, sum - now - 1e-9 * Math.abs(now));
    }

    private double best(double[] likelihood) {
        return Math.max(sum(Kind.FINISH, likelihood), sum(Kind.STOP, likelihood));
    }

    private double sum(Kind kind, double[] likelihood) {
        double most = Double.NEGATIVE_INFINITY;
        for (End end : prospect.ends()) {
            if (end.kind() == kind) {
                double sum = 0;
                for (int p = 0; p < likelihood.length; p++) {
                    sum += prospect.weights()[p] * likelihood[p] * end.money()[p];
                }
                most = Math.max(most, sum);
            }
        }
        return most;
    }
}
