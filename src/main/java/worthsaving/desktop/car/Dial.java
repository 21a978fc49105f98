package worthsaving.desktop.car;

import java.util.Currency;

/** Something that a slider moves. Values are in the unit shown beside it. */
public sealed interface Dial permits Lever, ItemDial {

    double low();

    /** @param given where it stands when it is not moved */
    double high(double given);

    double step();

    String label();

    String explanation();

    /** A value with its unit. */
    String text(double value, Currency currency);

    /** Name of its slider. */
    String id();

    /** Whether the car need not be prepared anew when it moves. */
    boolean quick();

    /** The nearest value that the slider can stand at. */
    default double snap(double value, double given) {
        double stepped = Math.round(value / step()) * step();
        return Math.max(low(), Math.min(high(given), stepped));
    }
}
