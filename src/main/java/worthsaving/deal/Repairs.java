package worthsaving.deal;

import java.util.BitSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import worthsaving.repair.RepairPlan;
import worthsaving.repair.RepairPlanner;
import worthsaving.repair.RepairWork;

/** Gives the repair plan of a set of failed items. */
@FunctionalInterface
public interface Repairs {

    /**
     * @param failed ids of failed items, perhaps none
     * @return empty when nothing that is allowed mends all of them
     */
    Optional<RepairPlan> planFor(Set<String> failed);

    /** The work of the same plan for sets of items given by their positions in a list. */
    default Function<BitSet, Optional<RepairWork>> over(List<String> items) {
        return pattern -> planFor(pattern.stream()
                        .mapToObj(items::get)
                        .collect(Collectors.toCollection(LinkedHashSet::new)))
                .map(RepairPlan::work);
    }

    /** The cheapest plans. */
    static Repairs cheapest(RepairPlanner planner) {
        return new Repairs() {
            @Override
            public Optional<RepairPlan> planFor(Set<String> failed) {
                return planner.find(failed).found();
            }

            @Override
            public Function<BitSet, Optional<RepairWork>> over(List<String> items) {
                return planner.over(items)::work;
            }
        };
    }
}
