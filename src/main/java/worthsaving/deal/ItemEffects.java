package worthsaving.deal;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import worthsaving.catalog.FailureItem;
import worthsaving.deal.Allotment.Run;

/** Expected profit with and without each failed item. */
final class ItemEffects {

    private final PreparedDeal prepared;
    private final double[] chance;
    private final double[] profitAndFailed;
    private double total;

    ItemEffects(PreparedDeal prepared, double[] profits) {
        this.prepared = prepared;
        int items = prepared.deal().patterns().items().size();
        this.chance = new double[items];
        this.profitAndFailed = new double[items];
        double[] weights = prepared.weights();
        for (Run run : prepared.runs()) {
            double weight = 0;
            double money = 0;
            for (int i = run.from(); i < run.to(); i++) {
                weight += weights[i];
                money += weights[i] * profits[i];
            }
            total += money;
            for (int j = run.pattern().nextSetBit(0); j >= 0; j = run.pattern().nextSetBit(j + 1)) {
                chance[j] += weight;
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
                effects.add(new ItemEffect(id, item == null ? id : item.name(), p, profitAndFailed[j] / chance[j], sound));
            }
        }
        effects.sort(Comparator.comparingDouble(ItemEffect::weight).reversed().thenComparing(ItemEffect::item));
        return effects;
    }
}
