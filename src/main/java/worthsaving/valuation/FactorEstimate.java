package worthsaving.valuation;

import java.util.List;
import java.util.Locale;
import java.util.function.Predicate;
import org.apache.commons.statistics.distribution.TDistribution;
import worthsaving.market.MarketFactor;
import worthsaving.market.PriceRow;
import worthsaving.quantity.Range;
import worthsaving.quantity.Source;

/**
 * Measures what a brand, a condition or damage does to the price: the mean of ln price less the model's
 * prediction of the same car as sound, among the marked cars, less the same among the unmarked ones. The
 * interval is Welch's 95 % (Welch 1947, Biometrika 34:28).
 */
public final class FactorEstimate {

    private static final int LEAST_CARS = 3;
    private static final double UPPER_TAIL = 0.975;

    private FactorEstimate() {}

    /**
     * @param key of the factor in the market settings
     * @param marked cars that bear the brand; rows that are neither marked nor reference are left out
     * @param source of the rows, for the label
     * @throws IllegalArgumentException when either group has fewer than {@value #LEAST_CARS} cars
     */
    public static MarketFactor measure(
            PriceModel model,
            List<PriceRow> rows,
            String key,
            Predicate<PriceRow> marked,
            Predicate<PriceRow> reference,
            String source) {
        Sample with = new Sample();
        Sample without = new Sample();
        for (PriceRow row : rows) {
            boolean bears = marked.test(row);
            if (bears || reference.test(row)) {
                double sound = model.predict(CarFacts.of(row).sound(model)).median();
                (bears ? with : without).add(Math.log(row.price()) - sound);
            }
        }
        if (with.n < LEAST_CARS || without.n < LEAST_CARS) {
            throw new IllegalArgumentException(
                    key + ": " + with.n + " marked and " + without.n + " other cars are too few to measure a factor");
        }
        double difference = with.mean - without.mean;
        double a = with.variance() / with.n;
        double b = without.variance() / without.n;
        double freedom = (a + b) * (a + b) / (a * a / (with.n - 1) + b * b / (without.n - 1));
        double reach = TDistribution.of(freedom).inverseCumulativeProbability(UPPER_TAIL) * Math.sqrt(a + b);
        return new MarketFactor(
                key,
                new Range(Math.exp(difference - reach), Math.exp(difference), Math.exp(difference + reach)),
                with.n,
                new Source(Source.Label.MEASURED, String.format(Locale.ROOT,
                        "against %,d other cars of %s; 95 %% interval", without.n, source)));
    }

    /** Running mean and sum of squares (Welford 1962). */
    private static final class Sample {
        private int n;
        private double mean;
        private double squares;

        private void add(double v) {
            n++;
            double step = v - mean;
            mean += step / n;
            squares += step * (v - mean);
        }

        private double variance() {
            return squares / (n - 1);
        }
    }
}
