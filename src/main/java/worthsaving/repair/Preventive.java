package worthsaving.repair;

import worthsaving.catalog.PartSource;
import worthsaving.quantity.Hours;
import worthsaving.quantity.Money;
import worthsaving.quantity.Probability;

/**
 * An item that is still sound but lies open, and what it costs to renew it now rather than later.
 *
 * @param source where its part would come from
 * @param now part, consumables, tools and the hours added to the plan
 * @param later the same job done alone when it is needed, tools bought for the plan being owned by then; for a
 *     root cause also the job it protects, done again at the chance that the cause kills it
 * @param hoursNow hours added to the plan
 * @param hoursLater hours of the job alone
 * @param breakEven chance of being needed above which it pays now: {@code now / later}
 * @param needed chance of being needed within the holding time
 * @param protects name of the planned job that it is a root cause of, so that it rides with it; blank for none
 */
public record Preventive(
        String item, String name, PartSource source, Money now, Money later, Hours hoursNow, Hours hoursLater,
        Probability breakEven, Probability needed, String protects) {

    /** What doing it now saves on average; negative when waiting is cheaper. */
    public Money gain() {
        return later.times(needed.value()).minus(now);
    }

    public boolean pays() {
        return gain().amount() > 0;
    }
}
