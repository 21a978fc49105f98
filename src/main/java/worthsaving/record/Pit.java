package worthsaving.record;

import java.util.Arrays;
import java.util.List;
import java.util.OptionalDouble;
import java.util.SplittableRandom;
import org.apache.commons.statistics.inference.KolmogorovSmirnovTest;
import org.apache.commons.statistics.inference.PValueMethod;
import worthsaving.quantity.Seed;

/**
 * Probability integral transforms: where in its forecast each result fell, 0 at the low end, 1 at the high. Right
 * forecasts make them uniform; heaped at the ends the forecasts were too sure, heaped in the middle too unsure, heaped at
 * one end off to one side. Where a forecast has a point mass at the result, a place within that mass is drawn. Sources:
 * Dawid (1984), Journal of the Royal Statistical Society A 147:278; randomised form: Czado, Gneiting and Held (2009),
 * Biometrics 65:1254.
 */
public final class Pit {

    private final double[] values;

    private Pit(double[] values) {
        this.values = values;
    }

    /** Values already known, each in 0 to 1. */
    static Pit ofValues(double... values) {
        return new Pit(values.clone());
    }

    /** @param results in an order that does not change, so that the same seed gives the same values */
    public static Pit of(List<Scored> results, Seed seed) {
        SplittableRandom random = seed.derive("place within a point mass").generator();
        return new Pit(results.stream().mapToDouble(r -> place(r.forecast(), r.actual(), random.nextDouble())).toArray());
    }

    /**
     * A value that comes once stands for the quantile at (i + 1/2)/n, so between two neighbours the result lies somewhere
     * in a stretch of 1/n, and beyond the last one in half of that; a point mass begins and ends where it does.
     */
    static double place(Ensemble forecast, double y, double u) {
        double n = forecast.size();
        int below = forecast.below(y);
        int ties = forecast.at(y);
        if (ties > 0) {
            return (below + u * ties) / n;
        }
        double low = below == 0 ? 0 : (below - (forecast.single(below - 1) ? 0.5 : 0)) / n;
        double high = below == n ? 1 : (below + (forecast.single(below) ? 0.5 : 0)) / n;
        return low + u * (high - low);
    }

    public double[] values() {
        return values.clone();
    }

    /** How many fell into each of equally wide bins. */
    public int[] histogram(int bins) {
        int[] counts = new int[bins];
        for (double v : values) {
            counts[(int) Math.min(bins - 1.0, Math.floor(v * bins))]++;
        }
        return counts;
    }

    /** Greatest distance between their distribution and the uniform one. */
    public double distance() {
        return test().statistic(values.clone(), Pit::uniform);
    }

    /**
     * Probability of such a distance or a greater one under right forecasts; exact. Kolmogorov-Smirnov, computed as by
     * Simard and L'Ecuyer (2011), Journal of Statistical Software 39(11). Empty for one value, which proves nothing.
     */
    public OptionalDouble pValue() {
        return values.length < 2 ? OptionalDouble.empty()
                : OptionalDouble.of(test().test(values.clone(), Pit::uniform).getPValue());
    }

    private static KolmogorovSmirnovTest test() {
        return KolmogorovSmirnovTest.withDefaults().with(PValueMethod.EXACT);
    }

    private static double uniform(double x) {
        return Math.max(0, Math.min(1, x));
    }

    @Override
    public String toString() {
        return "Pit" + Arrays.toString(values);
    }
}
