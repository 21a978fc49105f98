package worthsaving.record;

import java.util.ArrayList;
import java.util.List;
import java.util.TreeMap;
import java.util.function.DoubleUnaryOperator;

/**
 * Mean squared error of probabilities, and what it is made of: score = reliability - resolution + uncertainty when
 * forecasts in one bin are alike. Sources: Brier (1950), Monthly Weather Review 78:1; Murphy (1973), Journal of Applied
 * Meteorology 12:595.
 *
 * @param score mean of (f - o)^2, 0 best
 * @param reliability weighted mean of (mean f - mean o)^2 over the bins, 0 best
 * @param resolution weighted mean of (mean o in the bin - mean o)^2, larger is better
 * @param uncertainty b (1 - b) with b the share that happened
 * @param logLoss mean of -ln of the probability given to what happened; infinite when that was 0
 * @param bins forecasts of about one size against how often they came true, ascending
 */
public record BrierScore(
        double score, double reliability, double resolution, double uncertainty, double logLoss, List<Bin> bins) {

    /**
     * @param mean mean forecast in the bin
     * @param happened how many of {@code count} came true
     */
    public record Bin(double mean, int happened, int count) {

        public double share() {
            return (double) happened / count;
        }

        /** How far the share can be trusted. */
        public Coverage coverage() {
            return Coverage.of(happened, count, mean);
        }
    }

    public BrierScore {
        bins = List.copyOf(bins);
    }

    /** Against always forecasting the share that happened: 1 perfect, 0 no better. 0 when nothing was uncertain. */
    public double skill() {
        return uncertainty == 0 ? 0 : 1 - score / uncertainty;
    }

    /** One bin for every distinct forecast, for which the decomposition is exact. */
    public static BrierScore exact(List<Chance> chances) {
        return of(chances, f -> f);
    }

    /** Bins of equal width over 0 to 1. */
    public static BrierScore binned(List<Chance> chances, int bins) {
        return of(chances, f -> Math.min(bins - 1.0, Math.floor(f * bins)));
    }

    private static BrierScore of(List<Chance> chances, DoubleUnaryOperator bin) {
        if (chances.isEmpty()) {
            throw new IllegalArgumentException("a score needs at least one forecast");
        }
        TreeMap<Double, List<Chance>> byBin = new TreeMap<>();
        chances.forEach(c -> byBin.computeIfAbsent(bin.applyAsDouble(c.forecast()), b -> new ArrayList<>()).add(c));
        double n = chances.size();
        double base = happened(chances) / n;
        double reliability = 0;
        double resolution = 0;
        List<Bin> bins = new ArrayList<>();
        for (List<Chance> group : byBin.values()) {
            Bin b = new Bin(group.stream().mapToDouble(Chance::forecast).average().orElseThrow(),
                    happened(group), group.size());
            bins.add(b);
            reliability += b.count() / n * square(b.mean() - b.share());
            resolution += b.count() / n * square(b.share() - base);
        }
        double score = chances.stream().mapToDouble(c -> square(c.forecast() - (c.happened() ? 1 : 0))).average().orElseThrow();
        double loss = chances.stream()
                .mapToDouble(c -> -Math.log(c.happened() ? c.forecast() : 1 - c.forecast())).average().orElseThrow();
        return new BrierScore(score, reliability, resolution, base * (1 - base), loss, bins);
    }

    private static int happened(List<Chance> chances) {
        return (int) chances.stream().filter(Chance::happened).count();
    }

    private static double square(double x) {
        return x * x;
    }
}
