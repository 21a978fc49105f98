package worthsaving.deal;

import java.util.ArrayList;
import java.util.List;
import worthsaving.quantity.Money;

/**
 * The sale value and what goes off it before price and repair. Lines are amounts or shares of the sale
 * value, so that another value moves the shares with it.
 */
public record SaleLedger(Money saleValue, List<Deduction> deductions) {

    /** One deduction: a fixed amount plus a share of the sale value. */
    public record Deduction(String name, Money fixed, double share) {

        Money from(Money saleValue) {
            return fixed.plus(saleValue.times(share));
        }
    }

    public SaleLedger {
        deductions = List.copyOf(deductions);
    }

    public static SaleLedger of(Money saleValue) {
        return new SaleLedger(saleValue, List.of());
    }

    public SaleLedger less(String name, Money amount) {
        return with(new Deduction(name, amount, 0));
    }

    /** @param share of the sale value, from 0 to 1 */
    public SaleLedger lessShare(String name, double share) {
        if (!(share >= 0 && share <= 1)) {
            throw new IllegalArgumentException(name + " must be a share of the sale value in 0 to 1, not " + share);
        }
        return with(new Deduction(name, Money.zero(saleValue.currency()), share));
    }

    public SaleLedger withSaleValue(Money value) {
        return new SaleLedger(value, deductions);
    }

    /** What is left before price and repair. */
    public Money net() {
        return saleValue.minus(CashLine.sum(lines(), Money.zero(saleValue.currency())));
    }

    /** The deductions in money, in the order they were given. */
    public List<CashLine> lines() {
        return deductions.stream().map(d -> new CashLine(d.name(), d.from(saleValue))).toList();
    }

    private SaleLedger with(Deduction deduction) {
        List<Deduction> more = new ArrayList<>(deductions);
        more.add(deduction);
        return new SaleLedger(saleValue, more);
    }
}
