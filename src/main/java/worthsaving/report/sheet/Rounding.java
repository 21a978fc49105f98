package worthsaving.report.sheet;

/** Round numbers for axes. */
final class Rounding {

    private Rounding() {}

    /** The next of 1, 2, 5 times a power of ten; 1 for what is not above zero. */
    static double up(double atLeast) {
        if (!(atLeast > 0)) {
            return 1;
        }
        double power = Math.pow(10, Math.floor(Math.log10(atLeast)));
        for (double step : new double[] {1, 2, 5}) {
            if (step * power >= atLeast * (1 - 1e-9)) {
                return step * power;
            }
        }
        return 10 * power;
    }
}
