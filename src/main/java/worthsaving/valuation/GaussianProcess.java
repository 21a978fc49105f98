package worthsaving.valuation;

import java.util.List;
import org.hipparchus.linear.ArrayRealVector;

/**
 * Regression by a Gaussian process with mean 0 (Rasmussen and Williams 2006, algorithm 2.1): what a car leaves is a
 * weighted sum over the cars of the data, by how much alike they are. For tables of few rows, where it errs less than
 * trees do; its cost grows with the cube of the rows.
 *
 * @param points of the cars it has seen
 * @param pull of each of them
 */
record GaussianProcess(FactSpace space, Likeness likeness, List<FactSpace.Point> points, double[] pull) {

    static final GaussianProcess NONE = new GaussianProcess(null, null, List.of(), new double[0]);

    GaussianProcess {
        points = List.copyOf(points);
    }

    /** @param y what is to be predicted, about 0 */
    static GaussianProcess fit(FactSpace space, Likeness likeness, List<FactSpace.Point> points, double[] y) {
        double[] pull = Likeness.decomposed(y.length, likeness.noise(),
                        (i, j) -> likeness.squared(space, points.get(i), points.get(j)))
                .getSolver().solve(new ArrayRealVector(y, false)).toArray();
        return new GaussianProcess(space, likeness, points, pull);
    }

    boolean fitted() {
        return pull.length > 0;
    }

    /** Zero for a process that is not fitted. */
    double predict(CarFacts car) {
        if (!fitted()) {
            return 0;
        }
        FactSpace.Point at = space.point(car);
        double sum = 0;
        for (int i = 0; i < pull.length; i++) {
            sum += pull[i] * Likeness.covariance(likeness.squared(space, at, points.get(i)));
        }
        return sum;
    }
}
