package worthsaving.deal;

import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import worthsaving.quantity.Range;

/**
 * Quantiles of the PERT-beta on [0, 1] at the n levels (k + 1/2)/n, for a grid of modes.
 *
 * <p>Between two modes of the grid the quantiles are interpolated in the mode, which keeps the mean
 * (1 + 4 mode)/6 exact, since that is linear in the mode. The incomplete beta integral is done by the
 * trapezoid rule after x = sin^2 t, where the integrand sin^(2a-1) t cos^(2b-1) t is smooth with
 * vanishing ends.
 */
final class PertTable {

    private static final int MODES = 64;
    private static final int STEPS = 8_192;
    private static final Map<Integer, PertTable> BY_LEVELS = new ConcurrentHashMap<>();

    private final double[][] quantiles;

    /** Made anew; {@link #of} keeps them. */
    PertTable(int levels) {
        quantiles = new double[MODES + 1][];
        for (int m = 0; m <= MODES / 2; m++) {
            double[] up = invert(1 + 4.0 * m / MODES, 5 - 4.0 * m / MODES, levels);
            centre(up, (1 + 4.0 * m / MODES) / 6);
            double[] down = new double[levels];
            for (int k = 0; k < levels; k++) {
                down[k] = 1 - up[levels - 1 - k];
            }
            quantiles[MODES - m] = down;
            quantiles[m] = up;
        }
    }

    static PertTable of(int levels) {
        return BY_LEVELS.computeIfAbsent(levels, PertTable::new);
    }

    /** low + width x quantile at the level of each point. */
    DrawnRange draw(Range range, char[] column) {
        if (!(range.width() > 0)) {
            return DrawnRange.certain(range.low(), range.mean());
        }
        double at = (range.mode() - range.low()) / range.width() * MODES;
        int cell = Math.min(MODES - 1, (int) at);
        double share = at - cell;
        return DrawnRange.mixed(range.mean(), range.low(), column, quantiles[cell], range.width() * (1 - share),
                quantiles[cell + 1], range.width() * share);
    }

    private static double[] invert(double a, double b, int levels) {
        double[] cumulative = new double[STEPS + 1];
        double step = Math.PI / 2 / STEPS;
        double before = 0;
        for (int i = 1; i <= STEPS; i++) {
            double t = i * step;
            double density = Math.pow(Math.sin(t), 2 * a - 1) * Math.pow(Math.max(0, Math.cos(t)), 2 * b - 1);
            cumulative[i] = cumulative[i - 1] + (before + density) / 2;
            before = density;
        }
        double total = cumulative[STEPS];
        double[] q = new double[levels];
        int i = 0;
        for (int k = 0; k < levels; k++) {
            double goal = (k + 0.5) / levels * total;
            while (cumulative[i + 1] < goal) {
                i++;
            }
            double t = (i + (goal - cumulative[i]) / (cumulative[i + 1] - cumulative[i])) * step;
            double sine = Math.sin(t);
            q[k] = sine * sine;
        }
        return q;
    }

    /** The midpoint rule misses the mean by about 1e-6; an offset of that size mends it. */
    private static void centre(double[] q, double mean) {
        double sum = 0;
        for (double x : q) {
            sum += x;
        }
        double offset = mean - sum / q.length;
        for (int k = 0; k < q.length; k++) {
            q[k] += offset;
        }
    }
}
