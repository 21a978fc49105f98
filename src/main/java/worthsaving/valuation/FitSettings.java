package worthsaving.valuation;

import java.util.EnumSet;
import java.util.Set;

/**
 * How a price model is fitted.
 *
 * @param folds parts of the cross-validation, 3 or more
 * @param threads fits run side by side; the result does not depend on it
 * @param penalty ridge penalty of the hedonic regression
 * @param trees trees of each boosted ensemble
 * @param leaves leaves of each tree at most
 * @param shrinkage step of boosting, above 0 to 1
 * @param bands price bands in which the interval is calibrated apart (Mondrian), 1 for none
 * @param ensembles candidates for the blend beside the regression, one or more
 * @param apart what never lies in two folds
 */
public record FitSettings(
        int folds,
        int threads,
        double penalty,
        int trees,
        int leaves,
        double shrinkage,
        int bands,
        Set<Ensemble> ensembles,
        Apart apart) {

    /**
     * What is held out together. CARS: all adverts of one car, so that error and interval are those of a car never
     * seen. ADVERTS: single rows, for a table whose future rows may be further adverts of cars it holds.
     */
    public enum Apart { CARS, ADVERTS }

    public FitSettings {
        ensembles = Set.copyOf(ensembles);
        if (folds < 3 || threads < 1 || !(penalty > 0) || trees < 1 || leaves < 2 || !(shrinkage > 0) || bands < 1
                || ensembles.isEmpty()) {
            throw new IllegalArgumentException(
                    "fit settings need folds >= 3, threads >= 1, penalty > 0, trees >= 1, leaves >= 2, "
                            + "shrinkage > 0, bands >= 1 and an ensemble");
        }
    }

    /** What the shipped models are fitted with. */
    public static FitSettings defaults() {
        return new FitSettings(5, 2, 2, 300, 64, 0.1, 5,
                EnumSet.of(Ensemble.ROBUST, Ensemble.SQUARE, Ensemble.ABSOLUTE), Apart.CARS);
    }

    /** A fit in about a fifth of the time: one ensemble and three folds, for slightly more error. */
    public static FitSettings quick() {
        return new FitSettings(3, 2, 2, 300, 64, 0.1, 5, EnumSet.of(Ensemble.ABSOLUTE), Apart.CARS);
    }

    public FitSettings withThreads(int count) {
        return new FitSettings(folds, count, penalty, trees, leaves, shrinkage, bands, ensembles, apart);
    }

    public FitSettings with(Apart held) {
        return new FitSettings(folds, threads, penalty, trees, leaves, shrinkage, bands, ensembles, held);
    }

    public FitSettings with(Set<Ensemble> others) {
        return new FitSettings(folds, threads, penalty, trees, leaves, shrinkage, bands, others, apart);
    }
}
