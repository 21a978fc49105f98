package worthsaving.ranking;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.Set;
import worthsaving.catalog.FailureItem;
import worthsaving.catalog.Onset;
import worthsaving.diagnosis.Belief;
import worthsaving.quantity.Distance;
import worthsaving.quantity.Money;
import worthsaving.quantity.Probability;
import worthsaving.repair.RepairPlan;
import worthsaving.repair.RepairPlanner;
import worthsaving.vehicle.Listing;

/**
 * What is left in an item that the repair leaves alone.
 *
 * @param chance that it is sound now and fails while the car is kept; a guess, from the wear of the catalogue
 * @param yearsUntilHalf years after which half of the cars on which it is sound now have it failed; empty when that
 *     is beyond what the catalogue's law of wear knows
 * @param cost of mending it alone, at the shop
 */
public record RemainingLife(FailureItem item, Probability chance, OptionalDouble yearsUntilHalf, Money cost) {

    /** Chance times cost. */
    public Money expected() {
        return cost.times(chance.value());
    }

    /** For every item that is not mended now and can be mended alone, the greatest expected cost first. */
    static List<RemainingLife> of(
            Appraisal appraisal, Set<String> mended, Holding holding, Map<String, FailureItem> items, RepairPlanner shop) {
        Listing listing = appraisal.listing();
        Distance odometer = holding.odometer(listing);
        double age = holding.age(listing);
        List<RemainingLife> left = new ArrayList<>();
        for (Belief belief : appraisal.diagnosis().beliefs()) {
            FailureItem item = items.get(belief.item());
            Onset onset = item.onset();
            double chance = (1 - belief.posterior().value()) * holding.meanwhile(onset, listing);
            if (chance > 0 && !mended.contains(item.id())) {
                shop.find(Set.of(item.id())).found().map(RepairPlan::meanCost).ifPresent(cost -> left.add(
                        new RemainingLife(item, Probability.of(chance),
                                onset.yearsUntilHalf(age, odometer, holding.milesPerYear()), cost)));
            }
        }
        left.sort(Comparator.comparing(RemainingLife::expected).reversed().thenComparing(l -> l.item().id()));
        return List.copyOf(left);
    }
}
