package worthsaving.deal;

import java.util.Comparator;
import java.util.List;
import worthsaving.quantity.Distance;
import worthsaving.quantity.Money;

/**
 * An owner's choice among mending and replacing over the same months and miles, undiscounted:
 * cost per mile = (upfront + chance of repeat x cost + other repairs + running difference - end value)
 * / miles. Common practice, no source. Comparing the quote with the value of the car alone is the error
 * it is here to prevent.
 */
public record KeeperPlan(int months, Distance distance, List<KeeperOption> options) {

    public KeeperPlan {
        options = List.copyOf(options);
        if (months <= 0 || !(distance.value() > 0) || options.isEmpty()) {
            throw new IllegalArgumentException("an owner's plan needs months, a distance and at least one option");
        }
    }

    public Money perMile(KeeperOption option) {
        return option.netCost().times(1 / distance.miles());
    }

    public Money perYear(KeeperOption option) {
        return option.netCost().times(12.0 / months);
    }

    /** The option with the least expected net cost. */
    public KeeperOption cheapest() {
        return options.stream().min(Comparator.comparing(KeeperOption::netCost)).orElseThrow();
    }

    /** What choosing {@code option} saves against {@code other}; negative when it costs more. */
    public Money saving(KeeperOption option, KeeperOption other) {
        return other.netCost().minus(option.netCost());
    }

    /** The quote at which both options cost the same: the owner's most to pay for the repair. */
    public Money breakEvenQuote(KeeperOption option, Money quote, KeeperOption other) {
        return quote.plus(saving(option, other));
    }

    /**
     * Chance that an option ends dearer than another one at its expectation, by its repeat alone:
     * 0, the chance of the repeat, that of no repeat, or 1.
     */
    public double chanceDearer(KeeperOption option, KeeperOption other) {
        double limit = other.netCost().amount();
        double chance = option.repeat().map(r -> r.chance().value()).orElse(0.0);
        double once = option.netCost().minus(option.repeat().map(Scenario.Repeat::expected)
                .orElse(Money.zero(option.endValue().currency()))).amount();
        return (once > limit ? 1 - chance : 0) + (option.netCostIfRepeated().amount() > limit ? chance : 0);
    }
}
