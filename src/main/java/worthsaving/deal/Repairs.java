package worthsaving.deal;

import java.util.Optional;
import java.util.Set;
import worthsaving.repair.RepairPlan;

/** Gives the repair plan of a set of failed items. */
@FunctionalInterface
public interface Repairs {

    /**
     * @param failed ids of failed items, perhaps none
     * @return empty when nothing that is allowed mends all of them
     */
    Optional<RepairPlan> planFor(Set<String> failed);
}
