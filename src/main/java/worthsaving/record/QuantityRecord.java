package worthsaving.record;

import java.util.List;
import java.util.OptionalDouble;
import java.util.function.ToDoubleFunction;
import java.util.stream.IntStream;
import worthsaving.quantity.Seed;

/**
 * Forecast against actual for one quantity over the finished cars; all but the shares in its unit.
 *
 * @param cars how many, at least one
 * @param bias mean of actual minus mean forecast
 * @param biasError standard error of the bias; empty for one car
 * @param crps mean continuous ranked probability score
 * @param naiveCrps the same of a forecaster who knows nothing but what the other cars came to (each car left out of its
 *     own forecast, scored as a sample); empty below three cars
 * @param coverage how often the central 80 % interval held
 * @param interval mean score of that interval
 * @param pinball mean pinball loss of the 10, 50 and 90 % quantiles
 * @param pit where in their forecasts the results fell
 */
public record QuantityRecord(
        Quantity quantity,
        int cars,
        double bias,
        OptionalDouble biasError,
        double crps,
        OptionalDouble naiveCrps,
        Coverage coverage,
        double interval,
        double[] pinball,
        Pit pit) {

    static final double INSIDE = 0.8;
    private static final double[] TAUS = {0.1, 0.5, 0.9};
    private static final int CARS_FOR_NAIVE = 3;

    /** @param results at least one */
    public static QuantityRecord of(Quantity quantity, List<Scored> results, Seed seed) {
        double[] errors = results.stream().mapToDouble(r -> r.actual() - r.forecast().mean()).toArray();
        double n = errors.length;
        double bias = IntStream.range(0, errors.length).mapToDouble(i -> errors[i]).sum() / n;
        double squares = IntStream.range(0, errors.length).mapToDouble(i -> (errors[i] - bias) * (errors[i] - bias)).sum();
        double alpha = 1 - INSIDE;
        int held = (int) results.stream().filter(r -> r.actual() >= low(r, alpha) && r.actual() <= high(r, alpha)).count();
        double[] pinball = new double[TAUS.length];
        for (int t = 0; t < TAUS.length; t++) {
            double tau = TAUS[t];
            pinball[t] = mean(results, r -> IntervalScores.pinball(r.forecast().quantile(tau), tau, r.actual()));
        }
        return new QuantityRecord(quantity, results.size(), bias,
                n > 1 ? OptionalDouble.of(Math.sqrt(squares / (n - 1) / n)) : OptionalDouble.empty(),
                mean(results, r -> Crps.of(r.forecast(), r.actual())),
                naive(results),
                Coverage.of(held, results.size(), INSIDE),
                mean(results, r -> IntervalScores.winkler(low(r, alpha), high(r, alpha), alpha, r.actual())),
                pinball,
                Pit.of(results, seed.derive(quantity.name())));
    }

    /** Share by which the forecasts score better than the naive forecaster: 1 perfect, 0 no better, below 0 worse. */
    public OptionalDouble skill() {
        return naiveCrps.isPresent() && naiveCrps.getAsDouble() > 0
                ? OptionalDouble.of(1 - crps / naiveCrps.getAsDouble()) : OptionalDouble.empty();
    }

    private static OptionalDouble naive(List<Scored> results) {
        if (results.size() < CARS_FOR_NAIVE) {
            return OptionalDouble.empty();
        }
        return IntStream.range(0, results.size()).mapToDouble(i -> Crps.fair(
                Ensemble.of(IntStream.range(0, results.size()).filter(j -> j != i)
                        .mapToDouble(j -> results.get(j).actual()).toArray()),
                results.get(i).actual())).average();
    }

    private static double low(Scored r, double alpha) {
        return r.forecast().quantile(alpha / 2);
    }

    private static double high(Scored r, double alpha) {
        return r.forecast().quantile(1 - alpha / 2);
    }

    private static double mean(List<Scored> results, ToDoubleFunction<Scored> score) {
        return results.stream().mapToDouble(score).average().orElseThrow();
    }
}
