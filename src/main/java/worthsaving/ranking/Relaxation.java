package worthsaving.ranking;

/**
 * An upper bound on what the cars from a depth on can still add: with prices lambda on the limits,
 * lambda x what is left + sum of max(0, profit - lambda x takes). Any prices of zero or more give a bound;
 * the best ones for all cars together are sought by subgradient steps. Source: Geoffrion (1974),
 * Mathematical Programming Study 2:82.
 */
final class Relaxation {

    private static final int STEPS = 2_000;

    private final double[][] takes;
    private final double[] lambda;
    /** By depth: sum of the positive reduced profits from there on. */
    private final double[] rest;
    private final double[] reduced;

    /**
     * @param profit by car
     * @param takes by car and limit
     * @param limit infinite where there is none
     */
    Relaxation(double[] profit, double[][] takes, double[] limit) {
        this.takes = takes;
        this.lambda = best(profit, takes, limit);
        this.reduced = new double[profit.length];
        this.rest = new double[profit.length + 1];
        for (int i = 0; i < profit.length; i++) {
            reduced[i] = profit[i] - priced(takes[i]);
        }
    }

    /** @param order of branching */
    void arrange(int[] order) {
        for (int d = order.length - 1; d >= 0; d--) {
            rest[d] = rest[d + 1] + Math.max(0, reduced[order[d]]);
        }
    }

    /** Reduced profit of a car: how clearly it belongs in or out. */
    double reduced(int car) {
        return reduced[car];
    }

    double takes(int car, int limit) {
        return takes[car][limit];
    }

    /** At most what the cars from {@code depth} on can bring; what is left of a limit is infinite where there is none. */
    double bound(int depth, double cash, double bays, double hours) {
        return rest[depth] + priced(SetProblem.CASH, cash) + priced(SetProblem.BAYS, bays)
                + priced(SetProblem.HOURS, hours);
    }

    private double priced(int limit, double left) {
        return lambda[limit] == 0 ? 0 : lambda[limit] * left;
    }

    private double priced(double[] takes) {
        double sum = 0;
        for (int k = 0; k < lambda.length; k++) {
            sum += lambda[k] * takes[k];
        }
        return sum;
    }

    private static double[] best(double[] profit, double[][] takes, double[] limit) {
        int m = limit.length;
        double total = 0;
        for (double p : profit) {
            total += Math.max(0, p);
        }
        double[] price = new double[m];
        double[] best = price.clone();
        double least = Double.POSITIVE_INFINITY;
        for (int step = 1; step <= STEPS; step++) {
            double[] slope = new double[m];
            double value = 0;
            for (int k = 0; k < m; k++) {
                slope[k] = bounded(limit[k]) ? limit[k] : 0;
                value += bounded(limit[k]) ? price[k] * limit[k] : 0;
            }
            for (int i = 0; i < profit.length; i++) {
                double worth = profit[i];
                for (int k = 0; k < m; k++) {
                    worth -= price[k] * takes[i][k];
                }
                if (worth > 0) {
                    value += worth;
                    for (int k = 0; k < m; k++) {
                        slope[k] -= takes[i][k];
                    }
                }
            }
            if (value < least) {
                least = value;
                best = price.clone();
            }
            for (int k = 0; k < m; k++) {
                // Steps are scaled by limit, so that dollars and bays move alike.
                price[k] = bounded(limit[k])
                        ? Math.max(0, price[k] - total / limit[k] * slope[k] / limit[k] / step)
                        : 0;
            }
        }
        return best;
    }

    private static boolean bounded(double limit) {
        return limit > 0 && !Double.isInfinite(limit);
    }
}
