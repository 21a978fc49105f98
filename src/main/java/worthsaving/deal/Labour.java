package worthsaving.deal;

import java.util.Objects;
import java.util.function.ToDoubleFunction;
import worthsaving.quantity.Money;

/**
 * Who does the repair, as far as the money goes.
 *
 * @param hourly what an hour of the repair costs
 * @param own whether the hours are the user's own: then they are no cash, and profit is also counted
 *     per hour
 * @param factor hours needed for one book hour, by id of the job or access step
 */
public record Labour(Money hourly, boolean own, ToDoubleFunction<String> factor) {

    public Labour {
        Objects.requireNonNull(hourly, "hourly");
        Objects.requireNonNull(factor, "factor");
    }

    /** Own hands at book speed. */
    public static Labour own(Money hourly) {
        return new Labour(hourly, true, id -> 1);
    }

    /** A shop that charges book hours. */
    public static Labour shop(Money hourly) {
        return new Labour(hourly, false, id -> 1);
    }
}
