package worthsaving.sensitivity;

import java.util.ArrayList;
import java.util.List;
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

    /**
     * Where the result crosses a level, as pieces of line: marching squares with linear interpolation
     * (Lorensen and Cline 1987 in two dimensions).
     */
    public List<Piece> contour(double level) {
        List<Piece> pieces = new ArrayList<>();
        for (int j = 0; j + 1 < up.length; j++) {
            for (int i = 0; i + 1 < across.length; i++) {
                List<double[]> crossed = new ArrayList<>();
                crossing(i, j, i + 1, j, level, crossed);
                crossing(i + 1, j, i + 1, j + 1, level, crossed);
                crossing(i, j + 1, i + 1, j + 1, level, crossed);
                crossing(i, j, i, j + 1, level, crossed);
                for (int k = 0; k + 1 < crossed.size(); k += 2) {
                    pieces.add(new Piece(crossed.get(k)[0], crossed.get(k)[1],
                            crossed.get(k + 1)[0], crossed.get(k + 1)[1]));
                }
            }
        }
        return pieces;
    }

    /** A piece of line in the units of the two figures. */
    public record Piece(double across1, double up1, double across2, double up2) {}

    private void crossing(int i1, int j1, int i2, int j2, double level, List<double[]> crossed) {
        double a = results[j1][i1] - level;
        double b = results[j2][i2] - level;
        if (a < 0 != b < 0) {
            double t = a / (a - b);
            crossed.add(new double[] {across[i1] + t * (across[i2] - across[i1]), up[j1] + t * (up[j2] - up[j1])});
        }
    }

    private static double[] grid(Input input, int steps) {
        double[] values = new double[steps];
        for (int i = 0; i < steps; i++) {
            values[i] = input.low() + (input.high() - input.low()) * i / (steps - 1);
        }
        return values;
    }
}
