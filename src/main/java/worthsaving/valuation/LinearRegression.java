package worthsaving.valuation;

import java.util.Arrays;

/**
 * Least squares with an intercept and an optional ridge penalty on the standardised columns.
 * With penalty 0 it is ordinary least squares.
 *
 * @param intercept value where every column is 0
 * @param coefficients one per column, in units of y per unit of the column
 * @param rSquared 1 - residual / total sum of squares
 * @param sigma residual standard error, sqrt(RSS / (n - columns - 1))
 */
public record LinearRegression(double intercept, double[] coefficients, double rSquared, double sigma) {

    /**
     * @param x rows by columns
     * @param penalty zero or more, on coefficients of columns scaled to unit length
     */
    public static LinearRegression fit(double[][] x, double[] y, double penalty) {
        int n = x.length;
        int k = x[0].length;
        double[] mean = new double[k];
        double meanY = Arrays.stream(y).sum() / n;
        for (double[] row : x) {
            for (int j = 0; j < k; j++) {
                mean[j] += row[j] / n;
            }
        }
        double[] length = new double[k];
        for (double[] row : x) {
            for (int j = 0; j < k; j++) {
                length[j] += (row[j] - mean[j]) * (row[j] - mean[j]);
            }
        }
        LinearSystem system = new LinearSystem(k);
        int[] columns = new int[k];
        Arrays.setAll(columns, j -> j);
        Arrays.setAll(length, j -> Math.sqrt(length[j]));
        double[] scaled = new double[k];
        for (int i = 0; i < n; i++) {
            for (int j = 0; j < k; j++) {
                scaled[j] = (x[i][j] - mean[j]) / length[j];
            }
            system.add(columns, scaled, k, y[i] - meanY);
        }
        double[] penalties = new double[k];
        Arrays.fill(penalties, penalty);
        double[] coefficients = system.solve(penalties);
        double intercept = meanY;
        for (int j = 0; j < k; j++) {
            coefficients[j] /= length[j];
            intercept -= coefficients[j] * mean[j];
        }
        return withStatistics(x, y, intercept, coefficients, meanY);
    }

    private static LinearRegression withStatistics(
            double[][] x, double[] y, double intercept, double[] coefficients, double meanY) {
        LinearRegression fit = new LinearRegression(intercept, coefficients, 0, 0);
        double residual = 0;
        double total = 0;
        for (int i = 0; i < x.length; i++) {
            double e = y[i] - fit.predict(x[i]);
            residual += e * e;
            total += (y[i] - meanY) * (y[i] - meanY);
        }
        int freedom = x.length - coefficients.length - 1;
        return new LinearRegression(
                intercept, coefficients, 1 - residual / total, Math.sqrt(residual / freedom));
    }

    public double predict(double[] row) {
        double sum = intercept;
        for (int j = 0; j < coefficients.length; j++) {
            sum += coefficients[j] * row[j];
        }
        return sum;
    }
}
