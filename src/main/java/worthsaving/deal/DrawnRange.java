package worthsaving.deal;

/** A PERT-distributed amount and the column of points that drives it. */
final class DrawnRange {

    private final double mean;
    private final double low;
    /** Null when the amount is certain. */
    private final char[] column;
    private final double[] lower;
    private final double[] upper;
    private final double lowerWidth;
    private final double upperWidth;

    private DrawnRange(
            double mean, double low, char[] column, double[] lower, double[] upper, double lowerWidth,
            double upperWidth) {
        this.mean = mean;
        this.low = low;
        this.column = column;
        this.lower = lower;
        this.upper = upper;
        this.lowerWidth = lowerWidth;
        this.upperWidth = upperWidth;
    }

    static DrawnRange certain(double amount, double mean) {
        return new DrawnRange(mean, amount, null, null, null, 0, 0);
    }

    /** low plus a mixture of two quantile functions of the unit interval, each by its share of the width. */
    static DrawnRange mixed(
            double mean, double low, char[] column, double[] lower, double lowerWidth, double[] upper,
            double upperWidth) {
        return new DrawnRange(mean, low, column, lower, upper, lowerWidth, upperWidth);
    }

    double mean() {
        return mean;
    }

    /** At a point. */
    double at(int point) {
        if (column == null) {
            return low;
        }
        int level = column[point];
        return low + lowerWidth * lower[level] + upperWidth * upper[level];
    }
}
