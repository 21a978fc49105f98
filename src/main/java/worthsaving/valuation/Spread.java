package worthsaving.valuation;

import java.util.Arrays;
import java.util.List;

/**
 * How far prices scatter about the middle. Two boosted quantile ensembles give the local reach downwards and
 * upwards (10 % and 90 % quantile of what the middle leaves); conformal ranks of held-out residuals over that
 * reach, apart in each price band, give the whole distribution (Romano, Patterson and Candes 2019, the scaled
 * form of Kivaranovic et al. 2020, with the bands of Vovk's Mondrian taxonomy).
 *
 * @param edges upper ends of the bands in ln price, but for the last band
 * @param ranks for each band the standardised residual at each of {@link #LEVELS}
 */
record Spread(TreeEnsemble down, TreeEnsemble up, double[] edges, double[][] ranks) {

    static final double LOWER = 0.1;
    static final double UPPER = 0.9;
    private static final double LEAST_REACH = 0.03;

    /** What a standard normal falls short of nine times in ten. */
    static final double NORMAL_90 = 1.2815515655446004;
    private static final int INNER = 99;

    /** Probabilities kept: 0.5 %, 1 % to 99 % and 99.5 %. */
    static final double[] LEVELS = levels();

    private static double[] levels() {
        double[] levels = new double[INNER + 2];
        levels[0] = 0.005;
        levels[INNER + 1] = 0.995;
        for (int i = 1; i <= INNER; i++) {
            levels[i] = i / 100.0;
        }
        return levels;
    }

    /**
     * The mean reach of some, ranks not filled in. The level of a fitted reach differs by some percent from one part of the
     * rows to the next, so ranks over those that were held out hold for their mean rather than for one more fit.
     */
    static Spread meanReach(List<Spread> some) {
        return unranked(
                TreeEnsemble.mean(some.stream().map(Spread::down).toList()),
                TreeEnsemble.mean(some.stream().map(Spread::up).toList()));
    }

    /** A reach whose ranks are not filled in. */
    static Spread unranked(TreeEnsemble down, TreeEnsemble up) {
        return new Spread(down, up, new double[0], new double[0][]);
    }

    /** Reach below and above the middle, in ln price; {@code x} holds the car's columns and then the middle. */
    double[] reach(float[] x) {
        return new double[] {Math.max(LEAST_REACH, -down.predict(x)), Math.max(LEAST_REACH, up.predict(x))};
    }

    /** Reach of a car about which there is more doubt than its columns tell; the doubt adds in variance. */
    static double[] widened(double[] reach, double doubt) {
        return Arrays.stream(reach).map(r -> Math.hypot(r, NORMAL_90 * doubt)).toArray();
    }

    int band(double middle) {
        return band(middle, edges);
    }

    static int band(double middle, double[] edges) {
        int band = 0;
        while (band < edges.length && middle > edges[band]) {
            band++;
        }
        return band;
    }

    static double standardise(double residual, double[] reach) {
        return residual / (residual < 0 ? reach[0] : reach[1]);
    }

    /** Distance of each level of {@link #LEVELS} from the middle, in ln price. */
    double[] residuals(double middle, double[] reach) {
        return Arrays.stream(ranks[band(middle)])
                .map(z -> z * (z < 0 ? reach[0] : reach[1]))
                .toArray();
    }
}
