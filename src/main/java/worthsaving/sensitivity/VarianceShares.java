package worthsaving.sensitivity;

import java.util.function.ToDoubleFunction;
import org.hipparchus.random.SobolSequenceGenerator;

/**
 * Shares of the variance of a result that independent inputs account for: alone (first order) and with
 * all their interactions (total). Estimators (b) and (f) of Saltelli and others (2010), Computer
 * Physics Communications 181:259, on one Sobol sequence of twice the dimension.
 *
 * @param mean of the result
 * @param variance of the result
 * @param first first-order share of each input
 * @param total total share of each input
 */
public record VarianceShares(double mean, double variance, double[] first, double[] total) {

    /**
     * @param inputs number of independent inputs
     * @param model result for a point of the unit cube; inputs with another distribution go through their
     *     quantile function
     * @param points of the sequence; a power of two keeps its balance
     */
    public static VarianceShares of(int inputs, ToDoubleFunction<double[]> model, int points) {
        if (inputs < 1 || points < 2) {
            throw new IllegalArgumentException("shares need an input and two points, not " + inputs + ", " + points);
        }
        double[][] a = new double[points][inputs];
        double[][] b = new double[points][inputs];
        fill(a, b);
        double[] fa = new double[points];
        double[] fb = new double[points];
        double sum = 0;
        for (int i = 0; i < points; i++) {
            fa[i] = model.applyAsDouble(a[i].clone());
            fb[i] = model.applyAsDouble(b[i].clone());
            sum += fa[i] + fb[i];
        }
        double mean = sum / (2 * points);
        double variance = 0;
        for (int i = 0; i < points; i++) {
            variance += (fa[i] - mean) * (fa[i] - mean) + (fb[i] - mean) * (fb[i] - mean);
        }
        variance /= 2 * points;
        double[] first = new double[inputs];
        double[] total = new double[inputs];
        for (int j = 0; j < inputs; j++) {
            for (int i = 0; i < points; i++) {
                double[] mixed = a[i].clone();
                mixed[j] = b[i][j];
                double fm = model.applyAsDouble(mixed);
                first[j] += (fb[i] - mean) * (fm - fa[i]);
                total[j] += (fa[i] - fm) * (fa[i] - fm);
            }
            first[j] = variance > 0 ? first[j] / points / variance : 0;
            total[j] = variance > 0 ? total[j] / (2 * points) / variance : 0;
        }
        return new VarianceShares(mean, variance, first, total);
    }

    private static void fill(double[][] a, double[][] b) {
        int inputs = a[0].length;
        double half = 0.5 / a.length;
        SobolSequenceGenerator sobol = new SobolSequenceGenerator(2 * inputs);
        for (int i = 0; i < a.length; i++) {
            double[] point = sobol.nextVector();
            for (int j = 0; j < inputs; j++) {
                a[i][j] = point[j] + half;
                b[i][j] = point[inputs + j] + half;
            }
        }
    }
}
