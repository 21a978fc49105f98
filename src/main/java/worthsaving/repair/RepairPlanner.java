package worthsaving.repair;

import java.util.BitSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import worthsaving.catalog.Catalogue;
import worthsaving.catalog.FailureItem;
import worthsaving.quantity.Hours;
import worthsaving.quantity.Probability;

/**
 * Finds the cheapest way to mend any set of failed items, exactly.
 *
 * <p>Cost of a set of jobs = parts + consumables + tools to buy (each once) + hours at the worker's
 * rate over the union of access steps (each once, with what it requires; a step is multiplied by the
 * strongest {@code easedBy} factor of the steps paid) + job hours + comeback reserve. A step that
 * makes others quicker is also paid for its own sake where that is cheaper. Every failed item is
 * closed by some job, so a failed root cause is always mended with what it has killed.
 *
 * <p>Labour of a set as the union of its steps: Rhys (1970), Management Science 17:200, and
 * Balinski (1970), Management Science 17:230 (shared fixed costs).
 *
 * <p>Safe to share between threads; results do not depend on their number.
 */
public final class RepairPlanner {

    private final JobTable table;
    private final PlanTables tables;

    /** @throws IllegalArgumentException if a price is not in the workshop's currency */
    public RepairPlanner(Catalogue catalogue, Workshop workshop) {
        this(catalogue, workshop, Set.of());
    }

    /**
     * For a car that is partly open: the named access steps, and all they require, cost no hours more, but do
     * when a job behind them has to be done again.
     *
     * @param open ids of access steps
     * @throws IllegalArgumentException if a price is not in the workshop's currency, or an id is no step
     */
    public RepairPlanner(Catalogue catalogue, Workshop workshop, Set<String> open) {
        table = new JobTable(catalogue, workshop, OpenAccess.closure(catalogue.accessSteps(), open));
        tables = new PlanTables(table);
    }

    /**
     * The cheapest plan for a set of failed items.
     *
     * @throws IllegalArgumentException if an id is not an item of the catalogue
     */
    public PlanResult find(Set<String> failedItems) {
        int[] failed = failedItems.stream().mapToInt(this::index).sorted().toArray();
        BitSet all = new BitSet();
        all.set(0, failed.length);
        Optional<RepairWork> work = new PatternPlanner(tables, failed).work(all);
        return work.isPresent()
                ? new PlanResult.Planned(tables.writer.plan(failedItems, work.get()))
                : new PlanResult.Infeasible(new Restrictions(table).unmendable(failed));
    }

    /**
     * For many sets of the items of one car, in one thread.
     *
     * @param items ids of its items
     * @throws IllegalArgumentException if an id is not an item of the catalogue
     */
    public PatternPlanner over(List<String> items) {
        return new PatternPlanner(tables, items.stream().mapToInt(this::index).toArray());
    }

    /**
     * The cheapest plan, for callers that know that there is one.
     *
     * @throws IllegalArgumentException if an id is not an item of the catalogue
     * @throws IllegalStateException if nothing allowed mends the set; the message names items and mends
     */
    public RepairPlan plan(Set<String> failedItems) {
        PlanResult result = find(failedItems);
        if (result instanceof PlanResult.Planned planned) {
            return planned.plan();
        }
        throw new IllegalStateException(((PlanResult.Infeasible) result).message());
    }

    /**
     * Where the part of an item can come from, with the source that plans use marked.
     *
     * @throws IllegalArgumentException if the id is not an item of the catalogue
     */
    public List<SourceOffer> sources(String item) {
        FailureItem wanted = table.items[index(item)];
        return table.parts.offers(wanted, table.labourAlone(wanted));
    }

    /**
     * Sound items that a plan of this planner lays open, or that are root causes of what it mends, and that are at
     * least a tenth cheaper now than later, best gain first; those that do not pay are listed too, so that their
     * break-even chance can be shown.
     *
     * @param needed chance of each item being needed within the holding time; others are left out
     */
    public List<Preventive> whileInThere(RepairPlan plan, Map<String, Probability> needed) {
        return new PreventiveAdvice(table, plan).advise(needed);
    }

    /** Access steps with all they require: none can be open without those. */
    public Set<String> withRequired(Set<String> steps) {
        return OpenAccess.closure(List.of(table.access.steps), steps);
    }

    /**
     * What is still to be opened to reach some steps, requirements first, at the easing of what is open; as it
     * would be charged if nothing else were done.
     *
     * @throws IllegalArgumentException if an id is no access step of the catalogue
     */
    public Map<String, Hours> stillToOpen(Set<String> steps) {
        BitSet reach = table.access.union(OpenAccess.closure(List.of(table.access.steps), steps));
        Map<String, Hours> hours = new LinkedHashMap<>();
        for (int s = reach.nextSetBit(0); s >= 0; s = reach.nextSetBit(s + 1)) {
            double left = table.access.hours[s] * table.access.factor(s, reach);
            if (left > 0) {
                hours.put(table.access.steps[s].id(), Hours.of(left));
            }
        }
        return hours;
    }

    /** A plan of this planner line by line. */
    public Quote quote(RepairPlan plan) {
        return new QuoteWriter(table).write(plan);
    }

    private int index(String id) {
        Integer index = table.itemIndex.get(id);
        if (index == null) {
            throw new IllegalArgumentException("the catalogue has no item " + id);
        }
        return index;
    }
}
