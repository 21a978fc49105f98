package worthsaving.sensitivity;

import java.util.function.DoubleBinaryOperator;

/**
 * A result over two figures moved together.
 *
 * @param across values of the first figure
 * @param up values of the second figure
 * @param results by position in {@code up} and {@code across}
 */
public record TwoWayMap(double[] across, double[] up, double[][] results) {

    /** @param steps values on each side, two or more, ends included */
    public static TwoWayMap of(Input first, Input second, int steps, DoubleBinaryOperator model) {
        if (steps < 2) {
            throw new IllegalArgumentException("a map needs two steps or more, not " + steps);
        }
        double[] across = grid(first, steps);
        double[] up = grid(second, steps);
        double[][] results = new double[steps][steps];
        for (int j = 0; j < steps; j++) {
            for (int i = 0; i < steps; i++) {
                results[j][i] = model.applyAsDouble(across[i], up[j]);
            }
        }
        return new TwoWayMap(across, up, results);
    }

    private static double[] grid(Input input, int steps) {
        double[] values = new double[steps];
        for (int i = 0; i < steps; i++) {
            values[i] = input.low() + (input.high() - input.low()) * i / (steps - 1);
        }
        return values;
    }
}
