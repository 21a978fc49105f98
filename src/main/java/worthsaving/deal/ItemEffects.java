package worthsaving.deal;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import worthsaving.catalog.FailureItem;

/** Expected profit with and without each failed item. */
final class ItemEffects {

    private final PreparedDeal prepared;
    private final double[] chance;
    private final double[] profitAndFailed;
    private double total;

    ItemEffects(PreparedDeal prepared, List<PatternProfit> byPattern, WayOut way) {
        this.prepared = prepared;
        int items = prepared.deal().patterns().items().size();
        this.chance = new double[items];
        this.profitAndFailed = new double[items];
        for (PatternProfit p : byPattern) {
            double money = p.weight() * p.profit()[way.ordinal()];
            total += money;
            for (int j = p.pattern().nextSetBit(0); j >= 0; j = p.pattern().nextSetBit(j + 1)) {
                chance[j] += p.weight();
                profitAndFailed[j] += money;
            }
        }
    }

    List<ItemEffect> heaviestFirst() {
        List<ItemEffect> effects = new ArrayList<>();
        for (int j = 0; j < chance.length; j++) {
            if (chance[j] > 0) {
                String id = prepared.deal().patterns().items().get(j);
                FailureItem item = prepared.deal().items().get(id);
                double p = Math.min(1, chance[j]);
                double sound = p > 1 - 1e-9 ? Double.NaN : (total - profitAndFailed[j]) / (1 - p);
                effects.add(new ItemEffect(
                        id, item == null ? id : item.name(), p, profitAndFailed[j] / chance[j], sound));
            }
        }
        effects.sort(Comparator.comparingDouble(ItemEffect::weight).reversed().thenComparing(ItemEffect::item));
        return effects;
    }
}
