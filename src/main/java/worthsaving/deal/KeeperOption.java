package worthsaving.deal;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import worthsaving.quantity.Money;

/**
 * One way to go on having a car over a horizon. Costs common to all options are left out.
 *
 * @param upfront what is paid or given up now: quote, replacement, tax, fees, as-is value given up
 * @param repeat chance that the repair must be done again within the horizon, and its cost
 * @param otherRepairs expected cost of everything else that fails within the horizon
 * @param running lines over the horizon against the other options: insurance dearer positive, fuel
 *     saved negative
 * @param endValue what the car is worth at the end
 */
public record KeeperOption(
        String name,
        List<CashLine> upfront,
        Optional<Scenario.Repeat> repeat,
        Money otherRepairs,
        List<CashLine> running,
        Money endValue) {

    public KeeperOption {
        upfront = List.copyOf(upfront);
        running = List.copyOf(running);
    }

    /**
     * Mending the car and keeping it, by own hands or at a quote.
     *
     * @param repair what the repair costs
     * @param asItStands what the car would fetch unmended, given up by keeping it
     * @param again chance that the repair must be done again, and its cost
     */
    public static KeeperOption repair(String name, Money repair, Money asItStands, Scenario.Repeat again,
            Money otherRepairs, Money endValue) {
        return new KeeperOption(name,
                List.of(new CashLine("repair", repair), new CashLine("as-is value given up", asItStands)),
                Optional.of(again), otherRepairs, List.of(), endValue);
    }

    /** Buying another car: price, tax on it, title and inspection from the terms. */
    public static KeeperOption replace(String name, Money price, DealTerms terms, Money otherRepairs,
            List<CashLine> running, Money endValue) {
        return new KeeperOption(name,
                List.of(new CashLine("price with tax and fees", terms.priceTerms().costOf(price)),
                        new CashLine("title", terms.money(Term.TITLE_TRANSFER).plus(terms.money(Term.TITLE_HISTORY))),
                        new CashLine("inspection", terms.money(Term.INSPECTION_PAID))),
                Optional.empty(), otherRepairs, running, endValue);
    }

    public Money upfrontTotal() {
        return CashLine.sum(upfront, Money.zero(endValue.currency()));
    }

    /** Expected net cost over the horizon. */
    public Money netCost() {
        return withoutRepeat().plus(repeat.map(Scenario.Repeat::expected).orElse(Money.zero(endValue.currency())));
    }

    /** Net cost when the repeat happens for certain. */
    public Money netCostIfRepeated() {
        return withoutRepeat().plus(repeat.map(Scenario.Repeat::cost).orElse(Money.zero(endValue.currency())));
    }

    private Money withoutRepeat() {
        Money runningTotal = CashLine.sum(running, Money.zero(endValue.currency()));
        return upfrontTotal().plus(otherRepairs).plus(runningTotal).minus(endValue);
    }

    /** The same with one upfront line replaced or added. */
    public KeeperOption withUpfront(CashLine line) {
        List<CashLine> lines = new ArrayList<>(upfront);
        lines.removeIf(l -> l.name().equals(line.name()));
        lines.add(line);
        return new KeeperOption(name, lines, repeat, otherRepairs, running, endValue);
    }
}
