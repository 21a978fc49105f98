package worthsaving.deal;

import worthsaving.quantity.Distribution;

/**
 * Quantiles of a distribution at the levels (k + 1/2)/n. In the middle, where they hardly bend, only
 * every eighth level is asked for and the rest interpolated: a step of at most 1/64 of the way to the
 * nearer end, which for a normal distribution errs by less than 2e-5 standard deviations.
 */
final class ValueLevels {

    private static final int FINEST = 64;
    private static final int WIDEST = 8;

    private ValueLevels() {}

    static double[] of(Distribution distribution, int levels) {
        double[] q = new double[levels];
        int k = 0;
        q[0] = at(distribution, 0, levels);
        while (k < levels - 1) {
            int next = Math.min(levels - 1, k + step(k, levels));
            q[next] = at(distribution, next, levels);
            for (int j = k + 1; j < next; j++) {
                q[j] = q[k] + (q[next] - q[k]) * (j - k) / (next - k);
            }
            k = next;
        }
        return q;
    }

    private static int step(int k, int levels) {
        int toEnd = Math.min(k, levels - 1 - k - WIDEST);
        int step = 1;
        while (step < WIDEST && 2 * step * FINEST <= toEnd) {
            step *= 2;
        }
        return step;
    }

    private static double at(Distribution distribution, int k, int levels) {
        return distribution.quantile((k + 0.5) / levels);
    }
}
