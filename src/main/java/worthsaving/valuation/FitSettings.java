package worthsaving.valuation;

import java.util.EnumSet;
import java.util.Set;

/**
 * How a price model is fitted.
 *
 * @param folds parts of the cross-validation, 3 or more; the more, the more a held-out model is like the one kept
 * @param held rows to judge by that are held out at least, in whole folds: a long table needs not every fold's model
 * @param threads fits run side by side; the result does not depend on it
 * @param penalty ridge penalty of the hedonic regression
 * @param trees trees of each boosted ensemble; half as many at twice the step for least absolute deviation, whose
 *     leaves are medians and overshoot less
 * @param leaves leaves of each tree at most
 * @param shrinkage step of boosting, above 0 to 1
 * @param bands price bands in which the interval is calibrated apart (Mondrian) at most, 1 for none
 * @param repeats fits of each ensemble of the model kept, each with a seed of its own, whose mean it takes; one held out
 *     is fitted once, so that its residuals are, if anything, slightly too large
 * @param ensembles candidates for the blend beside the regression, one or more
 * @param mostForProcess rows up to which a Gaussian process joins the blend, 0 for never; it takes the cube of the rows
 * @param apart what never lies in two folds
 */
public record FitSettings(
        int folds,
        int held,
        int threads,
        double penalty,
        int trees,
        int leaves,
        double shrinkage,
        int bands,
        int repeats,
        Set<Ensemble> ensembles,
        int mostForProcess,
        Apart apart) {

    /**
     * What is held out together. CARS: all adverts of one car, so that error and interval are those of a car never
     * seen. ADVERTS: single rows, for a table whose future rows may be further adverts of cars it holds.
     */
    public enum Apart { CARS, ADVERTS }

    private static final int LEAST_FOLDS_HELD = 3;
    private static final int LEAST_LEAVES = 16;
    private static final int ROWS_PER_LEAF = 500;
    private static final int LEAST_ROWS_IN_BAND = 300;
    private static final int FEW_ROWS = 2_500;

    public FitSettings {
        ensembles = Set.copyOf(ensembles);
        if (folds < 3 || held < 1 || threads < 1 || !(penalty > 0) || trees < 1 || leaves < 2 || !(shrinkage > 0)
                || bands < 1 || repeats < 1 || mostForProcess < 0 || ensembles.isEmpty()) {
            throw new IllegalArgumentException(
                    "fit settings need folds >= 3, held >= 1, threads >= 1, penalty > 0, trees >= 1, leaves >= 2, "
                            + "shrinkage > 0, bands >= 1, repeats >= 1, no negative count and an ensemble");
        }
    }

    /** What the shipped models are fitted with. */
    public static FitSettings defaults() {
        return new FitSettings(10, 12_000, 2, 2, 600, 64, 0.05, 5, 3,
                EnumSet.of(Ensemble.ROBUST, Ensemble.SQUARE, Ensemble.ABSOLUTE), FEW_ROWS, Apart.CARS);
    }

    /** One ensemble and fewer rows held out: quicker, for slightly more error. */
    public static FitSettings quick() {
        return new FitSettings(10, 5_000, 2, 2, 600, 64, 0.05, 5, 1, EnumSet.of(Ensemble.ROBUST), FEW_ROWS, Apart.CARS);
    }

    /** Folds that get a model fitted without them, of this many rows. */
    int foldsHeld(int rows) {
        return (int) Math.min(folds, Math.max(LEAST_FOLDS_HELD, ((long) held * folds + rows - 1) / rows));
    }

    /** Leaves of each tree: a table of few rows bears few. */
    int leavesFor(int rows) {
        return Math.min(leaves, Math.max(LEAST_LEAVES, rows / ROWS_PER_LEAF));
    }

    /** Price bands for this many residuals: a band of few has noisy ranks and covers a little too many. */
    int bandsFor(int residuals) {
        return Math.min(bands, Math.max(1, residuals / LEAST_ROWS_IN_BAND));
    }

    public FitSettings withThreads(int count) {
        return new FitSettings(
                folds, held, count, penalty, trees, leaves, shrinkage, bands, repeats, ensembles, mostForProcess, apart);
    }

    public FitSettings with(Apart never) {
        return new FitSettings(
                folds, held, threads, penalty, trees, leaves, shrinkage, bands, repeats, ensembles, mostForProcess, never);
    }

    public FitSettings with(Set<Ensemble> others) {
        return new FitSettings(
                folds, held, threads, penalty, trees, leaves, shrinkage, bands, repeats, others, mostForProcess, apart);
    }
}
