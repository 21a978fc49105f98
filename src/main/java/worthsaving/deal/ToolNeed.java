package worthsaving.deal;

import java.util.Objects;
import worthsaving.quantity.Money;
import worthsaving.quantity.Probability;

/**
 * A tool not owned that mending a car may make one buy.
 *
 * @param price mean price
 * @param chance that it has to be bought for this car
 */
public record ToolNeed(String tool, String name, Money price, Probability chance) {

    public ToolNeed {
        Objects.requireNonNull(tool, "tool");
        Objects.requireNonNull(name, "name");
        Objects.requireNonNull(price, "price");
        Objects.requireNonNull(chance, "chance");
    }

    /** Price at its chance. */
    public Money expected() {
        return price.times(chance.value());
    }
}
