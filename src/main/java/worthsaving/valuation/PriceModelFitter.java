package worthsaving.valuation;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.concurrent.CancellationException;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.BooleanSupplier;
import worthsaving.market.Cleaning;
import worthsaving.quantity.Seed;

/**
 * Fits a price model: cross-validation over folds gives held-out residuals, from which the blend is chosen and
 * the interval calibrated (cross-conformal prediction, Vovk 2015); then everything is fitted once more on all
 * rows. The result depends on rows, settings and seed alone, not on the number of threads.
 */
public final class PriceModelFitter {

    /** Told how far the fit is. */
    public interface Progress {
        /**
         * @param step what is being done, for people
         * @param share done so far, 0 to 1
         */
        void at(String step, double share);
    }

    private static final int LEAST_ROWS = 100;
    private static final double FEW_ROWS = 10;

    private final FitSettings settings;
    private final Seed seed;
    private final Progress progress;
    private final BooleanSupplier cancelled;

    private PriceModelFitter(FitSettings settings, Seed seed, Progress progress, BooleanSupplier cancelled) {
        this.settings = settings;
        this.seed = seed;
        this.progress = progress;
        this.cancelled = cancelled;
    }

    /**
     * @param data cleaned rows with their report
     * @param cancelled asked between steps
     * @throws IllegalArgumentException when there are fewer than {@value #LEAST_ROWS} rows
     * @throws CancellationException when {@code cancelled} says so
     */
    public static PriceModel fit(
            Cleaning data, FitSettings settings, Seed seed, Progress progress, BooleanSupplier cancelled) {
        if (data.table().rows().size() < LEAST_ROWS) {
            throw new IllegalArgumentException(data.table().shape().name() + ": a price model needs at least "
                    + LEAST_ROWS + " rows after cleaning, here are " + data.table().rows().size());
        }
        return new PriceModelFitter(settings, seed, progress, cancelled).run(data);
    }

    private PriceModel run(Cleaning data) {
        progress.at("gathering rows", 0);
        TrainingSet set = new TrainingSet(data.table().rows(), settings, seed);
        ExecutorService pool = Executors.newFixedThreadPool(settings.threads());
        try {
            List<PointModel> points = each(pool, "price level", 0.05, 0.75, -1, set.held,
                    k -> PointFitter.fit(set, k, settings, seed.derive("fold " + k)));
            PointModel whole = points.get(0);
            Guard guard = new Guard(
                    Quantiles.of(set.cars.stream().mapToDouble(CarFacts::age), 0.999),
                    Quantiles.of(set.cars.stream().mapToDouble(CarFacts::miles), 0.999),
                    whole.hedonic().effectSpread("make "),
                    whole.hedonic().effectSpread("model "),
                    FEW_ROWS);
            CrossValidation cross = CrossValidation.of(set, points.subList(1, points.size()), guard);
            SpreadFitter.Residuals residuals = cross.residuals();
            List<Spread> reaches = each(pool, "interval", 0.75, 0.98, 0, TrainingSet.PARTS,
                    k -> SpreadFitter.reach(residuals, cross.rowsWithout(k), seed.derive("reach " + k)));
            double[] scores = cross.scores(reaches);
            int bands = settings.bandsFor(scores.length);
            Spread spread = SpreadFitter.calibrate(Spread.meanReach(reaches), cross.middle(), scores, bands);
            progress.at("model card", 0.98);
            CarFacts typical = TypicalCar.of(set.cars);
            ModelCard card = CardWriter.card(data, set.size(), whole, cross, reaches, spread, seed);
            progress.at("done", 1);
            return new PriceModel(
                    whole.withWeights(cross.weights()), spread, guard, typical, UsualFacts.of(set.cars), card);
        } finally {
            pool.shutdownNow();
        }
    }

    private interface Fold<T> {
        T fit(int k);
    }

    /** Runs the folds from {@code first} to before {@code end} side by side and gives their results in order. */
    private <T> List<T> each(
            ExecutorService pool, String what, double from, double to, int first, int end, Fold<T> fold) {
        AtomicInteger done = new AtomicInteger();
        List<Future<T>> futures = new ArrayList<>();
        for (int k = first; k < end; k++) {
            int one = k;
            Callable<T> task = () -> {
                if (cancelled.getAsBoolean()) {
                    throw new CancellationException("fitting was cancelled");
                }
                T result = fold.fit(one);
                progress.at(what, from + (to - from) * done.incrementAndGet() / (end - first));
                return result;
            };
            futures.add(pool.submit(task));
        }
        List<T> results = new ArrayList<>();
        for (Future<T> future : futures) {
            results.add(result(future));
        }
        return results;
    }

    private static <T> T result(Future<T> future) {
        try {
            return future.get();
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new CancellationException("fitting was interrupted");
        } catch (ExecutionException e) {
            if (e.getCause() instanceof RuntimeException cause) {
                throw cause;
            }
            throw new IllegalStateException(e.getCause());
        }
    }
}
