package worthsaving.valuation;

import org.hipparchus.exception.MathIllegalArgumentException;
import org.hipparchus.linear.Array2DRowRealMatrix;
import org.hipparchus.linear.ArrayRealVector;
import org.hipparchus.linear.CholeskyDecomposition;
import org.hipparchus.linear.DecompositionSolver;
import org.hipparchus.linear.RealVector;

/**
 * Normal equations of a penalised least-squares fit, gathered row by row so that a row with few non-zero
 * columns costs little: (X'X + diag(penalty)) b = X'y (ridge: Hoerl and Kennard 1970, Technometrics 12:55).
 * Solved by Cholesky with one step of iterative refinement, in plain Java: the same bits on every processor.
 */
final class LinearSystem {

    private final double[][] gram;
    private final double[] cross;

    LinearSystem(int columns) {
        gram = new double[columns][columns];
        cross = new double[columns];
    }

    /** Adds a row given by its non-zero columns. */
    void add(int[] columns, double[] values, int count, double y) {
        for (int i = 0; i < count; i++) {
            double[] row = gram[columns[i]];
            double v = values[i];
            for (int j = 0; j < count; j++) {
                row[columns[j]] += v * values[j];
            }
            cross[columns[i]] += v * y;
        }
    }

    /** Adds all rows of another system over the same columns. */
    void addAll(LinearSystem other) {
        for (int i = 0; i < cross.length; i++) {
            cross[i] += other.cross[i];
            for (int j = 0; j < cross.length; j++) {
                gram[i][j] += other.gram[i][j];
            }
        }
    }

    /**
     * Coefficients for a penalty per column.
     *
     * @throws IllegalArgumentException when the columns are linearly dependent and not penalised
     */
    double[] solve(double[] penalty) {
        Array2DRowRealMatrix matrix = new Array2DRowRealMatrix(gram, true);
        for (int i = 0; i < penalty.length; i++) {
            matrix.addToEntry(i, i, penalty[i]);
        }
        RealVector target = new ArrayRealVector(cross, false);
        try {
            DecompositionSolver solver = new CholeskyDecomposition(matrix, 1e-9, 1e-13).getSolver();
            RealVector first = solver.solve(target);
            RealVector residual = target.subtract(matrix.operate(first));
            return first.add(solver.solve(residual)).toArray();
        } catch (MathIllegalArgumentException e) {
            throw new IllegalArgumentException(
                    "the columns of the regression are linearly dependent; drop one or set a penalty above zero", e);
        }
    }
}
