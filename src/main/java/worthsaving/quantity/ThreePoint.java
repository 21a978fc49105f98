package worthsaving.quantity;

import java.util.function.DoubleUnaryOperator;

/**
 * A distribution told in three cases: bad, middling and good.
 *
 * @param outer probability of the bad case and of the good one, above 0 and below one half
 */
public record ThreePoint(double low, double middle, double high, double outer) {

    private static final double TAIL = 0.05;
    private static final double OUTER = 0.185;

    public ThreePoint {
        if (!(outer > 0 && outer < 0.5)) {
            throw new IllegalArgumentException("the outer cases need a probability in 0 to one half, not " + outer);
        }
    }

    /**
     * The 5 %, 50 % and 95 % quantiles with probabilities 0.185, 0.63 and 0.185, which keep mean and variance of
     * most smooth distributions. Source: Keefer and Bodily (1983), Management Science 29:595, extended
     * Pearson-Tukey.
     *
     * @param quantile of the distribution
     */
    public static ThreePoint extendedPearsonTukey(DoubleUnaryOperator quantile) {
        return new ThreePoint(quantile.applyAsDouble(TAIL), quantile.applyAsDouble(0.5),
                quantile.applyAsDouble(1 - TAIL), OUTER);
    }

    public double mean() {
        return outer * (low + high) + (1 - 2 * outer) * middle;
    }
}
