package worthsaving.valuation;

import java.util.List;

/**
 * The middle of ln price: a hedonic regression, a robust boosted ensemble that corrects it, and one of near square
 * loss about the mean. {@code weights} blend the three candidates.
 *
 * @param center mean of ln price
 */
record PointModel(
        Encoder encoder, Hedonic hedonic, double center, TreeEnsemble robust, TreeEnsemble square, double[] weights) {

    static final List<String> CANDIDATES =
            List.of("hedonic regression", "boosted trees, robust loss", "boosted trees, square loss");

    /** ln price by each candidate; {@code x} is filled with the car's columns. */
    double[] candidates(CarFacts car, float[] x) {
        double base = hedonic.predict(car);
        encoder.encode(car, encoder, base, x, 0);
        return new double[] {base, base + robust.predict(x), center + square.predict(x)};
    }

    double blend(double[] candidates) {
        double sum = 0;
        for (int i = 0; i < weights.length; i++) {
            sum += weights[i] * candidates[i];
        }
        return sum;
    }

    PointModel withWeights(double[] other) {
        return new PointModel(encoder, hedonic, center, robust, square, other);
    }
}
