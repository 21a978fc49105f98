package worthsaving.valuation;

import java.util.ArrayList;
import java.util.List;

/**
 * The middle of ln price: a hedonic regression, boosted ensembles and, over few rows, a Gaussian process, blended.
 *
 * @param center mean of ln price, from which those start that do not correct the regression
 * @param trees of each {@link Ensemble}, in order; {@link TreeEnsemble#NONE} where there are none
 * @param process {@link GaussianProcess#NONE} where there is none
 * @param weights of the regression, of each ensemble and of the process, summing to 1
 */
record PointModel(
        Encoder encoder, Hedonic hedonic, double center, List<TreeEnsemble> trees, GaussianProcess process,
        double[] weights) {

    static final int CANDIDATES = 2 + Ensemble.ALL.size();
    static final int PROCESS = CANDIDATES - 1;

    PointModel {
        trees = List.copyOf(trees);
    }

    /** ln price by each candidate, in the order of the weights; {@code x} is filled with the car's columns. */
    double[] candidates(CarFacts car, float[] x) {
        double base = hedonic.predict(car);
        encoder.encode(car, encoder, base, x, 0);
        double[] values = new double[CANDIDATES];
        values[0] = base;
        for (Ensemble e : Ensemble.ALL) {
            values[1 + e.ordinal()] = (e.onHedonic ? base : center) + trees.get(e.ordinal()).predict(x);
        }
        values[PROCESS] = center + process.predict(car);
        return values;
    }

    /** Name of a candidate, for the model card. */
    static String title(int candidate) {
        if (candidate == 0) {
            return "hedonic regression";
        }
        return candidate == PROCESS
                ? "likeness to each car of the data (Gaussian process)" : Ensemble.ALL.get(candidate - 1).title;
    }

    boolean fitted(int candidate) {
        return candidate == 0 || (candidate == PROCESS
                ? process.fitted() : trees.get(candidate - 1).trees() > 0);
    }

    double blend(double[] candidates) {
        double sum = 0;
        for (int i = 0; i < weights.length; i++) {
            sum += weights[i] * candidates[i];
        }
        return sum;
    }

    /** The same with these weights; what has no weight is dropped. */
    PointModel withWeights(double[] other) {
        List<TreeEnsemble> kept = new ArrayList<>();
        for (int i = 0; i < trees.size(); i++) {
            kept.add(other[1 + i] > 0 ? trees.get(i) : TreeEnsemble.NONE);
        }
        return new PointModel(
                encoder, hedonic, center, kept, other[PROCESS] > 0 ? process : GaussianProcess.NONE, other);
    }
}
