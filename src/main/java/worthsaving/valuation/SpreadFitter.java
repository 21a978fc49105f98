package worthsaving.valuation;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import worthsaving.quantity.Seed;

/** Fits the local reach on held-out residuals and calibrates it on reaches that are held out in turn. */
final class SpreadFitter {

    private static final Boosting.Settings TREES = new Boosting.Settings(150, 16, 0.08, 0.7, 0.6, 60);
    private static final double CORNER = 0.05;

    /**
     * Figures of every row held out: its columns followed by the middle, and what the middle leaves.
     *
     * @param types of the columns, as in {@link Boosting.Rows}
     */
    record Residuals(float[] x, String[] types, float[] left, double[] middle) {

        Boosting.Rows rows(int[] some) {
            int width = types.length;
            float[] part = new float[some.length * width];
            for (int i = 0; i < some.length; i++) {
                System.arraycopy(x, some[i] * width, part, i * width, width);
            }
            return new Boosting.Rows(part, types);
        }

        float[] left(int[] some) {
            float[] part = new float[some.length];
            for (int i = 0; i < some.length; i++) {
                part[i] = left[some[i]];
            }
            return part;
        }
    }

    private SpreadFitter() {}

    /** Reach ensembles fitted on these rows; ranks are not filled in. */
    static Spread reach(Residuals all, int[] rows, Seed seed) {
        Boosting.Rows matrix = all.rows(rows);
        float[] left = all.left(rows);
        return Spread.unranked(
                Boosting.fitQuantile(matrix, left, Spread.LOWER, CORNER, TREES, seed.derive("reach down")),
                Boosting.fitQuantile(matrix, left, Spread.UPPER, CORNER, TREES, seed.derive("reach up")));
    }

    /**
     * @param scores standardised residual of every row held out
     * @param bands price bands with equally many rows
     */
    static Spread calibrate(Spread reach, double[] middle, double[] scores, int bands) {
        double[] sorted = middle.clone();
        Arrays.sort(sorted);
        double[] edges = new double[bands - 1];
        Arrays.setAll(edges, b -> sorted[(int) ((long) (b + 1) * sorted.length / bands)]);
        Spread edged = new Spread(reach.down(), reach.up(), edges, new double[0][]);
        List<List<Double>> byBand = new ArrayList<>();
        for (int b = 0; b < bands; b++) {
            byBand.add(new ArrayList<>());
        }
        for (int i = 0; i < middle.length; i++) {
            byBand.get(edged.band(middle[i])).add(scores[i]);
        }
        double[][] ranks = new double[bands][];
        for (int b = 0; b < bands; b++) {
            double[] own = byBand.get(b).stream().mapToDouble(s -> s).sorted().toArray();
            double[] used = own.length > 0 ? own : Arrays.stream(scores).sorted().toArray();
            ranks[b] = Conformal.distribution(used, Spread.LEVELS);
        }
        return new Spread(reach.down(), reach.up(), edges, ranks);
    }
}
