package worthsaving.valuation;

import java.util.List;
import ml.dmlc.xgboost4j.java.DMatrix;
import ml.dmlc.xgboost4j.java.IObjective;
import ml.dmlc.xgboost4j.java.XGBoostError;

/** Pinball loss (Koenker and Bassett 1978) with a rounded corner, so that its second derivative is positive. */
final class RoundedPinball implements IObjective {

    private static final long serialVersionUID = 1;

    private final double p;
    private final double slope;

    RoundedPinball(double p, double slope) {
        this.p = p;
        this.slope = slope;
    }

    @Override
    public List<float[]> getGradient(float[][] predictions, DMatrix matrix) {
        float[] labels;
        try {
            labels = matrix.getLabel();
        } catch (XGBoostError e) {
            throw new IllegalStateException("fitting trees failed: " + e.getMessage(), e);
        }
        float[] gradient = new float[labels.length];
        float[] curvature = new float[labels.length];
        for (int i = 0; i < labels.length; i++) {
            double z = (predictions[i][0] - labels[i]) / slope;
            double root = Math.sqrt(1 + z * z);
            // Derivative of sqrt(1 + z^2) leans by 1 - 2p, so that it is zero at the p-quantile.
            gradient[i] = (float) (z / root + (1 - 2 * p));
            curvature[i] = (float) (1 / (slope * root));
        }
        return List.of(gradient, curvature);
    }
}
