package worthsaving.valuation;

import java.util.ArrayList;
import java.util.List;

/**
 * The middle of ln price: a hedonic regression and boosted ensembles, blended.
 *
 * @param center mean of ln price, from which ensembles start that do not correct the regression
 * @param trees of each {@link Ensemble}, in order; {@link TreeEnsemble#NONE} where there are none
 * @param weights of the regression and then of each ensemble, summing to 1
 */
record PointModel(
        Encoder encoder, Hedonic hedonic, double center, List<TreeEnsemble> trees, double[] weights) {

    static final int CANDIDATES = 1 + Ensemble.ALL.size();

    PointModel {
        trees = List.copyOf(trees);
    }

    /** ln price by the regression and then by each ensemble; {@code x} is filled with the car's columns. */
    double[] candidates(CarFacts car, float[] x) {
        double base = hedonic.predict(car);
        encoder.encode(car, encoder, base, x, 0);
        double[] values = new double[CANDIDATES];
        values[0] = base;
        for (Ensemble e : Ensemble.ALL) {
            values[1 + e.ordinal()] = (e.onHedonic ? base : center) + trees.get(e.ordinal()).predict(x);
        }
        return values;
    }

    double blend(double[] candidates) {
        double sum = 0;
        for (int i = 0; i < weights.length; i++) {
            sum += weights[i] * candidates[i];
        }
        return sum;
    }

    /** The same with these weights; an ensemble without weight is dropped. */
    PointModel withWeights(double[] other) {
        List<TreeEnsemble> kept = new ArrayList<>();
        for (int i = 0; i < trees.size(); i++) {
            kept.add(other[1 + i] > 0 ? trees.get(i) : TreeEnsemble.NONE);
        }
        return new PointModel(encoder, hedonic, center, kept, other);
    }
}
