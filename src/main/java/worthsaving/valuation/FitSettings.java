package worthsaving.valuation;

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
 */
public record FitSettings(
        int folds, int threads, double penalty, int trees, int leaves, double shrinkage, int bands) {

    public FitSettings {
        if (folds < 3 || threads < 1 || !(penalty > 0) || trees < 1 || leaves < 2 || !(shrinkage > 0) || bands < 1) {
            throw new IllegalArgumentException(
                    "fit settings need folds >= 3, threads >= 1, penalty > 0, trees >= 1, leaves >= 2, "
                            + "shrinkage > 0 and bands >= 1");
        }
    }

    public static FitSettings defaults() {
        return new FitSettings(5, 2, 2, 600, 64, 0.06, 5);
    }

    public FitSettings withThreads(int count) {
        return new FitSettings(folds, count, penalty, trees, leaves, shrinkage, bands);
    }
}
