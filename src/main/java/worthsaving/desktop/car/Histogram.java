package worthsaving.desktop.car;

import worthsaving.deal.Outcome;

/**
 * Profits in equally wide bins; zero is always an edge, so that loss and gain never share a bin. What lies
 * beyond the ends is counted in the end bins.
 *
 * @param low lower edge of the first bin
 * @param width of each bin, a round number
 * @param shares probability of each bin
 */
public record Histogram(double low, double width, double[] shares, double mean, double chanceOfLoss) {

    private static final double TAIL = 0.002;

    /** @param bins about how many */
    static Histogram of(Outcome profit, int bins) {
        double from = Math.min(0, profit.quantile(TAIL));
        double to = Math.max(0, profit.quantile(1 - TAIL));
        double width = round((to - from) / bins);
        long first = (long) Math.floor(from / width);
        long last = Math.max(first + 1, (long) Math.ceil(to / width));
        double[] shares = new double[(int) (last - first)];
        for (int i = 0; i < shares.length; i++) {
            double lower = i == 0 ? 0 : profit.below((first + i) * width);
            double upper = i == shares.length - 1 ? 1 : profit.below((first + i + 1) * width);
            shares[i] = upper - lower;
        }
        return new Histogram(first * width, width, shares, profit.mean(), profit.chanceOfLoss());
    }

    public double high() {
        return low + width * shares.length;
    }

    public double tallest() {
        double tallest = 0;
        for (double share : shares) {
            tallest = Math.max(tallest, share);
        }
        return tallest;
    }

    /** Distance between labels on the axis so that there are at most so many. */
    public double tick(int most) {
        return round((high() - low) / most);
    }

    /** The next of 1, 2, 5 times a power of ten. */
    static double round(double atLeast) {
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
