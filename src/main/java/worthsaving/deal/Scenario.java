package worthsaving.deal;

import java.util.Objects;
import java.util.Optional;
import worthsaving.quantity.Hours;
import worthsaving.quantity.Money;
import worthsaving.quantity.Probability;

/**
 * One of several mutually exclusive states of a car, with what it takes.
 *
 * @param money parts and everything else that is bought
 * @param hours working hours, paid at the deal's rate
 * @param repeat chance that something must be done again, and its cost
 * @param otherWayOut when mending is not worth it: what another way out leaves before the price is paid,
 *     all its own costs taken off; the deal's ledger and the repair then do not count
 */
public record Scenario(
        String name,
        Probability probability,
        Money money,
        Hours hours,
        Optional<Repeat> repeat,
        Optional<Money> otherWayOut) {

    /** Something that has to be done again with some chance. */
    public record Repeat(Probability chance, Money cost) {

        public Money expected() {
            return cost.times(chance.value());
        }
    }

    public Scenario {
        Objects.requireNonNull(name, "name");
        Objects.requireNonNull(probability, "probability");
        Objects.requireNonNull(money, "money");
        Objects.requireNonNull(hours, "hours");
    }

    public static Scenario mend(String name, double probability, Money money, double hours) {
        return new Scenario(
                name, Probability.of(probability), money, Hours.of(hours), Optional.empty(), Optional.empty());
    }

    public static Scenario leave(String name, double probability, Money netBeforePrice) {
        Money none = Money.zero(netBeforePrice.currency());
        return new Scenario(
                name, Probability.of(probability), none, Hours.NONE, Optional.empty(), Optional.of(netBeforePrice));
    }

    public Scenario withRepeat(double chance, Money cost) {
        return new Scenario(
                name, probability, money, hours, Optional.of(new Repeat(Probability.of(chance), cost)), otherWayOut);
    }

    public Scenario withProbability(double p) {
        return new Scenario(name, Probability.of(p), money, hours, repeat, otherWayOut);
    }

    /** Cost when nothing has to be repeated. */
    public Money costOnce(Money hourly) {
        return money.plus(hours.at(hourly));
    }

    /** Cost with a repeat at its chance. */
    public Money expectedCost(Money hourly) {
        Money once = costOnce(hourly);
        return repeat.map(r -> once.plus(r.expected())).orElse(once);
    }
}
