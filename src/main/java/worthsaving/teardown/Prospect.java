package worthsaving.teardown;

import java.util.Arrays;
import java.util.List;

/**
 * A car in pieces as a decision problem in plain numbers: what may have failed, how the job can end, and what
 * can be looked at before. Forward money only.
 *
 * @param weights probability of each failure pattern
 * @param opening money of opening each access step that is closed now
 */
record Prospect(double[] weights, double[] opening, List<End> ends, List<Look> looks) {

    Prospect {
        ends = List.copyOf(ends);
        looks = List.copyOf(looks);
    }

    Prospect with(List<Look> others) {
        return new Prospect(weights, opening, ends, others);
    }

    /**
     * A way to end the job.
     *
     * @param money by pattern
     * @param afterOpening by pattern and step: what is added once the step has been opened: its price where
     *     the plan pays for it anyway, less the closing where it does not; empty when neither matters
     */
    record End(Move.Kind kind, String id, String name, double[] money, double[][] afterOpening) {

        static End stop(String id, String name, double money, int patterns) {
            double[] all = new double[patterns];
            Arrays.fill(all, money);
            return new End(Move.Kind.STOP, id, name, all, new double[0][]);
        }

        double at(int pattern, long opened) {
            double sum = money[pattern];
            if (afterOpening.length > 0) {
                for (long rest = opened; rest != 0; rest &= rest - 1) {
                    sum += afterOpening[pattern][Long.numberOfTrailingZeros(rest)];
                }
            }
            return sum;
        }
    }

    /**
     * Something that can be looked at.
     *
     * @param cost of looking once it is reached
     * @param opens steps that must be open, as bits
     * @param results names of what may be seen
     * @param likelihood by result and pattern; the results of a pattern add up to 1
     */
    record Look(String id, String name, double cost, long opens, List<String> results, double[][] likelihood) {

        Look {
            results = List.copyOf(results);
        }
    }

    double price(long steps) {
        double sum = 0;
        for (long rest = steps; rest != 0; rest &= rest - 1) {
            sum += opening[Long.numberOfTrailingZeros(rest)];
        }
        return sum;
    }
}
