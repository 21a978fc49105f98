package worthsaving.desktop.market;

/** A span about zero on a scale that several bars share, with a tick at its middle. */
final class SpanBar extends Drawing {

    private final double low;
    private final double middle;
    private final double high;
    private final double reach;

    /** @param reach of the scale to either side of zero */
    SpanBar(double low, double middle, double high, double reach) {
        super("span-bar");
        this.low = low;
        this.middle = middle;
        this.high = high;
        this.reach = reach;
        setMinSize(80, 12);
        setMaxWidth(Double.MAX_VALUE);
    }

    @Override
    void draw(double em) {
        double half = getHeight() / 2;
        line(0, half, getWidth(), half, "limit");
        bar(x(low), 0.2 * getHeight(), x(high) - x(low), 0.6 * getHeight(), "span");
        line(x(0), 0, x(0), getHeight(), "axis");
        bar(x(middle) - 1, 0.1 * getHeight(), 2, 0.8 * getHeight(), "middle");
    }

    private double x(double value) {
        return Math.max(0, Math.min(1, 0.5 + value / (2 * reach))) * getWidth();
    }
}
