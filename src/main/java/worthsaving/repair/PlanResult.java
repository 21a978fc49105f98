package worthsaving.repair;

import java.util.List;
import java.util.Optional;

/** Outcome of looking for a repair plan. */
public sealed interface PlanResult {

    /** The plan, if there is one. */
    Optional<RepairPlan> found();

    /** The cheapest plan. */
    record Planned(RepairPlan plan) implements PlanResult {

        @Override
        public Optional<RepairPlan> found() {
            return Optional.of(plan);
        }
    }

    /** No set of jobs mends everything under the workshop's restrictions. */
    record Infeasible(List<Unmendable> items) implements PlanResult {

        public Infeasible {
            items = List.copyOf(items);
        }

        @Override
        public Optional<RepairPlan> found() {
            return Optional.empty();
        }

        /** Every fault in one text, one per line. */
        public String message() {
            return String.join("\n", items.stream().map(Unmendable::message).toList());
        }
    }

    /**
     * An item that no allowed job closes.
     *
     * @param item id
     * @param reason what stands in the way
     * @param mend what the user can change so that it works
     */
    record Unmendable(String item, String name, String reason, String mend) {

        public String message() {
            return item + " (" + name + "): " + reason + "; " + mend;
        }
    }
}
