package worthsaving.desktop.car;

import java.util.Currency;
import java.util.Locale;
import worthsaving.desktop.Figures;
import worthsaving.desktop.Texts;

/** Prices, worths and rules that the user can pull to see the verdict move. */
public enum Lever implements Dial {
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

    @Override
    public double low() {
        return low;
    }

    /** The greatest value; for the price of a dear car, twice the ask. */
    @Override
    public double high(double given) {
        return this == PRICE ? Math.max(high, 2 * given) : high;
    }

    @Override
    public double step() {
        return step;
    }

    @Override
    public boolean quick() {
        return quick;
    }

    @Override
    public String label() {
        return Texts.of("lever", this);
    }

    @Override
    public String explanation() {
        return Texts.of("lever.explain", this);
    }

    @Override
    public String text(double value, Currency currency) {
        return Texts.of("lever.unit." + name().toLowerCase(Locale.ROOT), Figures.amount(value),
                currency.getCurrencyCode());
    }

    @Override
    public String id() {
        return "lever-" + name().toLowerCase(Locale.ROOT);
    }
}
