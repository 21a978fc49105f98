package worthsaving.desktop;

import java.util.Locale;
import worthsaving.quantity.Money;
import worthsaving.quantity.MoneyRange;
import worthsaving.quantity.Range;

/** How numbers are written on screen. Rounds for the eye only; copies and exports round less. */
public final class Figures {

    private static final String MINUS = "\u2212";

    private Figures() {}

    /** Keeps a currency and its amount on one line. */
    public static String whole(String sentence) {
        return sentence.replaceAll("\\b([A-Z]{3}) (?=[-\u2212]?[0-9])", "$1\u00a0").replaceAll("(?<=\u00a0)-", "\u2212");
    }

    /** Whole units without the currency, such as {@code 2,300}. */
    public static String amount(double amount) {
        return signed(Math.rint(amount), "%,.0f");
    }

    /** With its currency, such as {@code USD 2,300}, as the verdicts write it. */
    public static String money(Money money) {
        return money.currency().getCurrencyCode() + " " + amount(money.amount());
    }

    public static String money(MoneyRange range) {
        return range.currency().getCurrencyCode() + " " + span(range.amount());
    }

    /** Low to high, or the one figure when they are the same. */
    public static String span(Range range) {
        String low = amount(range.low());
        String high = amount(range.high());
        return low.equals(high) ? low : low + " \u2013 " + high;
    }

    /** A probability; what is not certain never reads 0 or 100. */
    public static String percent(double p) {
        if (p > 0 && p < 0.005) {
            return "< 1 %";
        }
        if (p < 1 && p > 0.995) {
            return "> 99 %";
        }
        return String.format(Locale.ROOT, "%.0f %%", 100 * p);
    }

    /** Hours, with a decimal while they are few. */
    public static String hours(double hours) {
        return hours == 0 ? "0" : number(hours, hours < 9.95 ? 1 : 0);
    }

    public static String days(double days) {
        return number(days, 0);
    }

    /** A plain number with this many decimals. */
    public static String number(double value, int decimals) {
        return signed(value, "%,." + decimals + "f");
    }

    private static String signed(double value, String format) {
        String digits = String.format(Locale.ROOT, format, Math.abs(value));
        boolean zero = digits.chars().noneMatch(c -> c >= '1' && c <= '9');
        return value < 0 && !zero ? MINUS + digits : digits;
    }
}
