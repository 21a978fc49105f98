package worthsaving.desktop.car;

import java.util.Currency;
import java.util.Locale;
import worthsaving.desktop.Figures;
import worthsaving.desktop.Texts;

/** What the user can pull to see the verdict move. Values are in the unit shown beside the slider. */
public enum Lever {
    PRICE(0, 10_000, 50, true),
    TARGET(0, 6_000, 50, true),
    LOSS(0, 100, 1, true),
    DAYS(1, 120, 1, true),
    HOURLY(0, 150, 1, false),
    SPEED(50, 300, 5, false),
    VALUE(50, 150, 1, false),
    PARTS(50, 250, 5, false);

    private final double low;
    private final double high;
    private final double step;
    private final boolean quick;

    Lever(double low, double high, double step, boolean quick) {
        this.low = low;
        this.high = high;
        this.step = step;
        this.quick = quick;
    }

    public double low() {
        return low;
    }

    /** The greatest value; for the price of a dear car, twice the ask. */
    public double high(double given) {
        return this == PRICE ? Math.max(high, 2 * given) : high;
    }

    public double step() {
        return step;
    }

    /** Whether the car need not be prepared anew when it moves. */
    boolean quick() {
        return quick;
    }

    /** The nearest value that the slider can stand at. */
    public double snap(double value, double given) {
        double stepped = Math.round(value / step) * step;
        return Math.max(low, Math.min(high(given), stepped));
    }

    public String label() {
        return Texts.of("lever", this);
    }

    public String explanation() {
        return Texts.of("lever.explain", this);
    }

    /** A value with its unit. */
    public String text(double value, Currency currency) {
        return Texts.of("lever.unit." + name().toLowerCase(Locale.ROOT), Figures.amount(value),
                currency.getCurrencyCode());
    }
}
