package worthsaving.ranking;

import java.util.Arrays;
import java.util.List;
import worthsaving.catalog.Catalogue;
import worthsaving.catalog.ShippedCatalogue;
import worthsaving.deal.Assessment;
import worthsaving.deal.WayOut;
import worthsaving.deal.WayResult;
import worthsaving.quantity.Money;
import worthsaving.quantity.Seed;
import worthsaving.vehicle.Listing;

/**
 * How far the figures of a whole judgement lie, at few points, from the mean of four runs of 16,384: root mean square over
 * the sample lot and four other seeds. Failed items, repairs, values and usual faults are all drawn anew with the seed.
 * Prints the table of docs/deal-accuracy.md.
 */
public final class JudgementAccuracy {

    private static final int[] POINTS = {256, 512, 1_024, 2_048, 4_096};
    private static final int REFERENCE = 16_384;
    private static final int SEEDS = 4;
    private static final int FIGURES = 4;

    private final Catalogue catalogue = ShippedCatalogue.load();

    private JudgementAccuracy() {}

    public static void main(String[] args) {
        new JudgementAccuracy().run();
    }

    private void run() {
        List<Listing> lot = SampleLot.read(catalogue);
        double[][] squares = new double[POINTS.length][FIGURES];
        for (Listing listing : lot) {
            double[] reference = new double[FIGURES];
            for (int seed = 0; seed < SEEDS; seed++) {
                double[] one = figures(listing, REFERENCE, 100 + seed);
                Arrays.setAll(reference, f -> reference[f] + one[f] / SEEDS);
            }
            for (int p = 0; p < POINTS.length; p++) {
                for (int seed = 1; seed <= SEEDS; seed++) {
                    double[] few = figures(listing, POINTS[p], seed);
                    for (int f = 0; f < FIGURES; f++) {
                        squares[p][f] += Math.pow(few[f] - reference[f], 2) / (SEEDS * lot.size());
                    }
                }
            }
        }
        System.out.println("""
                | points | expected profit, $ | most to pay, $ | chance of loss, points | best check's net worth, $ |
                |---|---|---|---|---|""");
        for (int p = 0; p < POINTS.length; p++) {
            System.out.printf("| %,d | %.1f | %.1f | %.2f | %.1f |%n", POINTS[p], Math.sqrt(squares[p][0]),
                    Math.sqrt(squares[p][1]), 100 * Math.sqrt(squares[p][2]), Math.sqrt(squares[p][3]));
        }
    }

    private double[] figures(Listing listing, int points, long seed) {
        JudgeSettings usual = JudgeSettings.usual(catalogue, new Seed(seed));
        JudgeSettings settings = new JudgeSettings(usual.workshop(), usual.terms(), usual.rule(), usual.trust(),
                usual.checks(), usual.method().withPoints(points), usual.patterns().withPoints(points),
                usual.towMilesAssumed());
        Appraisal appraisal =
                ((Judged.Done) new Judge(catalogue, SampleLot.byAge(), settings).judge(listing)).appraisal();
        Assessment assessment = appraisal.assessment();
        WayResult repaired = assessment.ways().get(WayOut.REPAIR_AND_SELL.ordinal());
        return new double[] {
            repaired.profit().mean(),
            assessment.mostToPay().limit().map(Money::amount).orElse(0.0),
            repaired.profit().chanceOfLoss(),
            appraisal.checks().stream().limit(1).mapToDouble(c -> c.net().amount()).sum()
        };
    }
}
