package worthsaving.ranking;

import java.util.Arrays;
import java.util.List;
import org.apache.commons.statistics.distribution.NormalDistribution;
import org.hipparchus.random.SobolSequenceGenerator;
import worthsaving.deal.Outcome;
import worthsaving.quantity.Seed;

/**
 * Profit of several cars together when one market moves all their sale values.
 *
 * <p>One-factor normal copula: profit of car i = F_i^-1(Phi(r_i Z + sqrt(1 - r_i^2) E_i)), with F_i its
 * distribution as judged, Z the market and E_i its own luck, all standard normal and independent. So every
 * car keeps exactly the distribution it was judged with, and two cars hang together by r_i r_j. The market
 * moves every sale value by a share with standard deviation s, a car's profit therefore by s x receipt:
 * r_i = min(1, s x receipt_i / standard deviation of its profit). Source of the copula: Vasicek (2002), Risk
 * 15(12):160; that the market's pull on profit is linear in the receipt is our simplification.
 *
 * <p>Integrated over {@value #POINTS} points of a Sobol sequence, shifted by the seed (Cranley and Patterson
 * 1976, SIAM Journal on Numerical Analysis 13:904).
 */
public final class MarketRisk {

    /** Standard deviation of the common part of all sale values, as a share: a guess, 0.05 to 0.15 likely. */
    public static final double USUAL_SPREAD = 0.10;

    private static final int POINTS = 16_384;
    private static final NormalDistribution NORMAL = NormalDistribution.of(0, 1);

    private MarketRisk() {}

    /**
     * Distribution of the set's profit. What its cars save on shared tools is added to every outcome.
     *
     * @param spread s, zero or more
     */
    public static Outcome of(ChosenSet set, double spread, Seed seed) {
        if (!(spread >= 0) || Double.isInfinite(spread)) {
            throw new IllegalArgumentException("the market's spread is a share of zero or more, not " + spread);
        }
        double[] sums = new double[POINTS];
        Arrays.fill(sums, set.toolsShared());
        List<Candidate> cars = set.cars();
        double[][] normal = normals(cars.size() + 1, seed);
        for (int c = 0; c < cars.size(); c++) {
            Candidate car = cars.get(c);
            double pull = pull(car, spread);
            double own = Math.sqrt(1 - pull * pull);
            int parts = car.spread().size();
            double[] edges = edges(parts);
            double[] values = values(car.spread(), parts);
            for (int i = 0; i < POINTS; i++) {
                double x = pull * normal[0][i] + own * normal[c + 1][i];
                int at = Arrays.binarySearch(edges, x);
                sums[i] += values[at >= 0 ? at + 1 : -at - 1];
            }
        }
        return Outcome.equallyLikely(sums);
    }

    /** Correlation of a car's profit with the market, r_i. */
    static double pull(Candidate car, double spread) {
        double deviation = car.spread().standardDeviation();
        return deviation > 0 ? Math.min(1, spread * Math.max(0, car.receipt()) / deviation) : 0;
    }

    /** Standard normal points between which each of equally likely parts lies. */
    private static double[] edges(int parts) {
        double[] edges = new double[parts - 1];
        for (int k = 1; k < parts; k++) {
            edges[k - 1] = NORMAL.inverseCumulativeProbability((double) k / parts);
        }
        return edges;
    }

    private static double[] values(Outcome spread, int parts) {
        double[] values = new double[parts];
        for (int k = 0; k < parts; k++) {
            values[k] = spread.quantile((k + 0.5) / parts);
        }
        return values;
    }

    private static double[][] normals(int dimensions, Seed seed) {
        SobolSequenceGenerator sobol = new SobolSequenceGenerator(dimensions);
        double[] shift = seed.derive("market risk of a set").generator().doubles(dimensions).toArray();
        double[][] normals = new double[dimensions][POINTS];
        for (int i = 0; i < POINTS; i++) {
            double[] point = sobol.nextVector();
            for (int d = 0; d < dimensions; d++) {
                double u = (point[d] + shift[d]) % 1;
                normals[d][i] = NORMAL.inverseCumulativeProbability(Math.min(1 - 1e-12, Math.max(1e-12, u)));
            }
        }
        return normals;
    }
}
