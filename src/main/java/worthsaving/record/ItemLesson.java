package worthsaving.record;

import java.util.Locale;
import java.util.Objects;

/**
 * What the finished cars teach about one failure item. The forecasts of the cars differ, so the belief is about the share
 * over such cars: before, their mean forecast; after, that mean weighed against how often the item had failed.
 *
 * @param item id in the catalogue
 * @param failed in how many of {@code cars} it had failed
 * @param cars cars where it was looked at
 * @param before mean forecast, at the stated worth
 * @param on whether it is used; the user's choice
 */
public record ItemLesson(String item, int failed, int cars, Share before, Share after, boolean on) {

    public ItemLesson {
        Objects.requireNonNull(item, "item");
    }

    /** What the odds of this item are to be multiplied by: odds after over odds before. */
    public double oddsFactor() {
        return after.mean() / (1 - after.mean()) * (1 - before.mean()) / before.mean();
    }

    /** Such as "HV_PACK: moved from 41 to 48 % by 5 cars, failed in 4". */
    public String words() {
        return String.format(Locale.ROOT, "%s: moved from %.0f to %.0f %% by %d %s, failed in %d%s", item,
                100 * before.mean(), 100 * after.mean(), cars, cars == 1 ? "car" : "cars", failed,
                on ? "" : " (switched off)");
    }
}
