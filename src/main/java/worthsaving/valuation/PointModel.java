package worthsaving.valuation;

import java.util.List;

/**
 * The middle of ln price: a hedonic regression, two boosted ensembles that correct it, one robust and one of least
 * absolute deviation, and one of near square loss about the mean. {@code weights} blend the four candidates.
 *
 * @param center mean of ln price
 */
record PointModel(
        Encoder encoder,
        Hedonic hedonic,
        double center,
        TreeEnsemble robust,
        TreeEnsemble square,
        TreeEnsemble absolute,
        double[] weights) {

    static final List<String> CANDIDATES =
            List.of(
            "hedonic regression",
            "boosted trees on it, robust loss (XGBoost)",
            "boosted trees, square loss (XGBoost)",
            "boosted trees on it, least absolute deviation (Smile)");

    /** ln price by each candidate; {@code x} is filled with the car's columns. */
    double[] candidates(CarFacts car, float[] x) {
        double base = hedonic.predict(car);
        encoder.encode(car, encoder, base, x, 0);
        return new double[] {base, base + robust.predict(x), center + square.predict(x), base + absolute.predict(x)};
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
        return new PointModel(
                encoder,
                hedonic,
                center,
                other[1] > 0 ? robust : TreeEnsemble.NONE,
                other[2] > 0 ? square : TreeEnsemble.NONE,
                other[3] > 0 ? absolute : TreeEnsemble.NONE,
                other);
    }
}
