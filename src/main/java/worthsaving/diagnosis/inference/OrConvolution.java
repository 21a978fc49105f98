package worthsaving.diagnosis.inference;

/**
 * c[k] = sum of a[i] b[j] over all i, j with i OR j = k, for vectors of length 2^bits, and its
 * derivative. Only sums and products of non-negative numbers: nothing cancels.
 */
final class OrConvolution {

    private final int bits;
    private final double[] either;
    private final double[] dEither;

    OrConvolution(int bits) {
        this.bits = bits;
        either = new double[1 << bits];
        dEither = new double[1 << bits];
    }

    /** Adds to {@code c}. */
    void add(double[] a, double[] b, double[] c) {
        add(a, 0, b, 0, c, 0, bits);
    }

    /** Sums of both halves of b stand in {@code either}, level by level at [2^(n-1), 2^n). */
    private void add(double[] a, int aAt, double[] b, int bAt, double[] c, int cAt, int n) {
        if (n == 1) {
            c[cAt] += a[aAt] * b[bAt];
            c[cAt + 1] += a[aAt] * b[bAt + 1] + a[aAt + 1] * (b[bAt] + b[bAt + 1]);
            return;
        }
        int half = 1 << n - 1;
        add(a, aAt, b, bAt, c, cAt, n - 1);
        add(a, aAt, b, bAt + half, c, cAt + half, n - 1);
        for (int k = 0; k < half; k++) {
            either[half + k] = b[bAt + k] + b[bAt + half + k];
        }
        add(a, aAt + half, either, half, c, cAt + half, n - 1);
    }

    /** From the derivative {@code dc} with respect to c: adds those with respect to a and b. */
    void addDerivative(double[] a, double[] b, double[] dc, double[] da, double[] db) {
        addDerivative(a, 0, b, 0, dc, 0, da, db, bits);
    }

    private void addDerivative(
            double[] a, int aAt, double[] b, int bAt, double[] dc, int cAt, double[] da, double[] db, int n) {
        if (n == 1) {
            double no = dc[cAt];
            double yes = dc[cAt + 1];
            da[aAt] += b[bAt] * no + b[bAt + 1] * yes;
            da[aAt + 1] += (b[bAt] + b[bAt + 1]) * yes;
            db[bAt] += a[aAt] * no + a[aAt + 1] * yes;
            db[bAt + 1] += (a[aAt] + a[aAt + 1]) * yes;
            return;
        }
        int half = 1 << n - 1;
        addDerivative(a, aAt, b, bAt, dc, cAt, da, db, n - 1);
        addDerivative(a, aAt, b, bAt + half, dc, cAt + half, da, db, n - 1);
        for (int k = half; k < 2 * half; k++) {
            either[k] = b[bAt + k - half] + b[bAt + k];
            dEither[k] = 0;
        }
        addDerivative(a, aAt + half, either, half, dc, cAt + half, da, dEither, n - 1);
        for (int k = 0; k < half; k++) {
            db[bAt + k] += dEither[half + k];
            db[bAt + half + k] += dEither[half + k];
        }
    }
}
