package worthsaving.deal;

import java.util.Objects;
import worthsaving.quantity.Money;

/** A named amount of money, kept apart so that every total can be traced. */
public record CashLine(String name, Money amount) {

    public CashLine {
        Objects.requireNonNull(name, "name");
        Objects.requireNonNull(amount, "amount");
    }

    /** @return the sum; zero of the currency for no lines */
    static Money sum(Iterable<CashLine> lines, Money zero) {
        Money total = zero;
        for (CashLine line : lines) {
            total = total.plus(line.amount);
        }
        return total;
    }
}
