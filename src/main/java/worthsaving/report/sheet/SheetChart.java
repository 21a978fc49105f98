package worthsaving.report.sheet;

import java.util.ArrayList;
import java.util.List;
import worthsaving.deal.Outcome;

/** Data of the one picture on a sheet. */
public sealed interface SheetChart {

    String title();

    /**
     * A distribution of money in equally wide bins with round edges. What lies beyond the ends is counted in the
     * end bins.
     *
     * @param low lower edge of the first bin
     * @param width of each bin
     * @param shares probability of each bin
     * @param split bins that lie wholly below it are bad news: zero profit, or above it: a ceiling
     * @param badBelow on which side of the split the bad news lies
     * @param marks figures pointed at on the axis
     */
    record Spread(String title, double low, double width, List<Double> shares, double split, boolean badBelow,
            List<Mark> marks) implements SheetChart {

        private static final double TAIL = 0.005;
        private static final int BINS = 30;

        public Spread {
            title = SheetText.clean(title);
            shares = List.copyOf(shares);
            marks = List.copyOf(marks);
        }

        /** With the split, and therefore no bin on both sides of it, on an edge. */
        static Spread of(String title, Outcome money, double split, boolean badBelow, List<Mark> marks) {
            double from = Math.min(split, money.quantile(TAIL));
            double to = Math.max(split, money.quantile(1 - TAIL));
            double width = Rounding.up((to - from) / BINS);
            int below = (int) Math.ceil((split - from) / width - 1e-9);
            int above = Math.max(below == 0 ? 1 : 0, (int) Math.ceil((to - split) / width - 1e-9));
            double low = split - below * width;
            List<Double> shares = new ArrayList<>();
            double sum = 0;
            for (int i = 1; i <= below + above; i++) {
                double upTo = i == below + above ? 1 : money.below(split + (i - below) * width);
                shares.add(upTo - sum);
                sum = upTo;
            }
            return new Spread(title, low, width, shares, split, badBelow, marks);
        }

        double high() {
            return low + width * shares.size();
        }

        boolean bad(int bin) {
            double middle = low + (bin + 0.5) * width;
            return badBelow ? middle < split : middle > split;
        }
    }

    /** A figure on the axis of a spread. */
    record Mark(String label, double value) {}

    /** Amounts side by side. */
    record Bars(String title, List<Bar> bars) implements SheetChart {

        public Bars {
            title = SheetText.clean(title);
            bars = List.copyOf(bars);
        }
    }

    /** @param best whether it is the one to take */
    record Bar(String label, double amount, boolean best) {

        public Bar {
            label = SheetText.clean(label);
        }
    }
}
