package worthsaving.diagnosis.inference;

/**
 * c[k] = sum of a[i] b[j] over all i, j with i OR j = k, for vectors of length 2^bits, and its
 * derivative. Only sums and products of non-negative numbers: nothing cancels.
 */
final class OrConvolution {

    private OrConvolution() {}

    /** Adds to {@code c}. */
    static void add(double[] a, int aAt, double[] b, int bAt, double[] c, int cAt, int bits) {
        if (bits == 0) {
            c[cAt] += a[aAt] * b[bAt];
            return;
        }
        int half = 1 << bits - 1;
        double[] either = sum(b, bAt, half);
        add(a, aAt, b, bAt, c, cAt, bits - 1);
        add(a, aAt, b, bAt + half, c, cAt + half, bits - 1);
        add(a, aAt + half, either, 0, c, cAt + half, bits - 1);
    }

    /** From the derivative {@code dc} with respect to c: adds those with respect to a and b. */
    static void addDerivative(
            double[] a, int aAt, double[] b, int bAt, double[] dc, int cAt, double[] da, double[] db, int bits) {
        if (bits == 0) {
            da[aAt] += b[bAt] * dc[cAt];
            db[bAt] += a[aAt] * dc[cAt];
            return;
        }
        int half = 1 << bits - 1;
        double[] either = sum(b, bAt, half);
        double[] dEither = new double[half];
        addDerivative(a, aAt, b, bAt, dc, cAt, da, db, bits - 1);
        addDerivative(a, aAt, b, bAt + half, dc, cAt + half, da, db, bits - 1);
        addDerivative(a, aAt + half, either, 0, dc, cAt + half, da, dEither, bits - 1);
        for (int k = 0; k < half; k++) {
            db[bAt + k] += dEither[k];
            db[bAt + half + k] += dEither[k];
        }
    }

    private static double[] sum(double[] b, int at, int half) {
        double[] either = new double[half];
        for (int k = 0; k < half; k++) {
            either[k] = b[at + k] + b[at + half + k];
        }
        return either;
    }
}
