package worthsaving.quantity;

import java.util.Currency;
import java.util.Objects;

/** A three-point estimate of money. */
public record MoneyRange(Range amount, Currency currency) {

    public MoneyRange {
        Objects.requireNonNull(amount, "amount");
        Objects.requireNonNull(currency, "currency");
    }

    public static MoneyRange exactly(Money money) {
        return new MoneyRange(Range.exactly(money.amount()), money.currency());
    }

    public static MoneyRange usd(double low, double mode, double high) {
        return new MoneyRange(new Range(low, mode, high), Money.USD);
    }

    public Money mean() {
        return new Money(amount.mean(), currency);
    }

    /** The same estimate in another currency, of which one unit of this buys {@code rate}. */
    public MoneyRange in(Currency other, double rate) {
        return new MoneyRange(amount.times(rate), other);
    }

    /** Scales by a factor of zero or more. */
    public MoneyRange times(double factor) {
        return new MoneyRange(amount.times(factor), currency);
    }
}
