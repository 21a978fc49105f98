package worthsaving.deal;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import worthsaving.quantity.Probability;
import worthsaving.repair.RepairPlan;

/** Adds up by tool the probability of the patterns whose plan buys it. */
final class ToolNeeds {

    private final double priceFactor;
    private final Map<String, RepairPlan.Purchase> bought = new TreeMap<>();
    private final Map<String, Double> chances = new TreeMap<>();

    /** @param priceFactor on the price of whatever is bought, at the mean */
    ToolNeeds(double priceFactor) {
        this.priceFactor = priceFactor;
    }

    void add(List<RepairPlan.Purchase> tools, double weight) {
        for (RepairPlan.Purchase tool : tools) {
            bought.putIfAbsent(tool.tool(), tool);
            chances.merge(tool.tool(), weight, Double::sum);
        }
    }

    /** By id. */
    List<ToolNeed> all() {
        List<ToolNeed> all = new ArrayList<>();
        bought.forEach((id, tool) -> all.add(new ToolNeed(id, tool.name(), tool.price().mean().times(priceFactor),
                Probability.of(Math.min(1, chances.get(id))))));
        return all;
    }
}
