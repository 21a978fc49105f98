package worthsaving.quantity;

import java.util.Currency;
import java.util.Locale;
import java.util.Objects;

/**
 * An amount in one currency. Amounts are kept unrounded; {@link #toString()} rounds to cents.
 * Arithmetic between currencies is a programming error: nothing here converts.
 */
public record Money(double amount, Currency currency) implements Comparable<Money> {

    public static final Currency USD = Currency.getInstance("USD");

    public Money {
        Objects.requireNonNull(currency, "currency");
        if (!Double.isFinite(amount)) {
            throw new IllegalArgumentException("an amount of money must be finite, not " + amount);
        }
    }

    public static Money of(double amount, String currencyCode) {
        return new Money(amount, Currency.getInstance(currencyCode));
    }

    public static Money usd(double amount) {
        return new Money(amount, USD);
    }

    public static Money zero(Currency currency) {
        return new Money(0, currency);
    }

    public Money plus(Money other) {
        return new Money(amount + sameCurrency(other).amount, currency);
    }

    public Money minus(Money other) {
        return new Money(amount - sameCurrency(other).amount, currency);
    }

    public Money times(double factor) {
        return new Money(amount * factor, currency);
    }

    /** In whole units, rounded down: a limit that rounding must not raise. */
    public Money wholeDown() {
        return new Money(Math.floor(amount + 1e-6), currency);
    }

    @Override
    public int compareTo(Money other) {
        return Double.compare(amount, sameCurrency(other).amount);
    }

    /** Plain text such as {@code "USD 2307.55"}, with a point, whatever the locale. */
    @Override
    public String toString() {
        return String.format(Locale.ROOT, "%s %.2f", currency.getCurrencyCode(), amount);
    }

    private Money sameCurrency(Money other) {
        if (!currency.equals(other.currency)) {
            throw new IllegalArgumentException("cannot mix " + currency + " with " + other.currency);
        }
        return other;
    }
}
