package worthsaving.repair;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import worthsaving.catalog.Catalogue;
import worthsaving.catalog.FailureItem;
import worthsaving.quantity.Probability;
import worthsaving.repair.CoverSearch.Cover;

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

    /** Groups kept; past this all are forgotten, which costs time and nothing else. */
    private static final int MOST_REMEMBERED = 50_000;

    private final JobTable table;
    private final PlanWriter writer;
    private final BitSet[] neighbours;
    private final Map<BitSet, Cover> solved = new ConcurrentHashMap<>();

    /** @throws IllegalArgumentException if a price is not in the workshop's currency */
    public RepairPlanner(Catalogue catalogue, Workshop workshop) {
        table = new JobTable(catalogue, workshop);
        writer = new PlanWriter(table);
        neighbours = Groups.neighbours(table);
    }

    /**
     * The cheapest plan for a set of failed items.
     *
     * @throws IllegalArgumentException if an id is not an item of the catalogue
     */
    public PlanResult find(Set<String> failedItems) {
        BitSet failed = indices(failedItems);
        List<PlanResult.Unmendable> stuck = new Restrictions(table).unmendable(failed);
        if (!stuck.isEmpty()) {
            return new PlanResult.Infeasible(stuck);
        }
        List<Cover> covers = new ArrayList<>();
        for (BitSet group : Groups.split(failed, neighbours)) {
            covers.add(cover(group));
        }
        return new PlanResult.Planned(writer.write(failedItems, covers));
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
     * Sound items that a plan of this planner lays open and that are at least a tenth cheaper now than
     * later, best gain first; those that do not pay are listed too, so that their break-even chance can
     * be shown.
     *
     * @param needed chance of each item being needed within the holding time; others are left out
     */
    public List<Preventive> whileInThere(RepairPlan plan, Map<String, Probability> needed) {
        return new PreventiveAdvice(table, plan).advise(needed);
    }

    /** A plan of this planner line by line. */
    public Quote quote(RepairPlan plan) {
        return new QuoteWriter(table).write(plan);
    }

    private Cover cover(BitSet group) {
        Cover known = solved.get(group);
        if (known == null) {
            known = new CoverSearch(table, group).run();
            if (solved.size() >= MOST_REMEMBERED) {
                solved.clear();
            }
            solved.put(group, known);
        }
        return known;
    }

    private BitSet indices(Set<String> ids) {
        BitSet set = new BitSet(table.items.length);
        for (String id : ids) {
            set.set(index(id));
        }
        return set;
    }

    private int index(String id) {
        Integer index = table.itemIndex.get(id);
        if (index == null) {
            throw new IllegalArgumentException("the catalogue has no item " + id);
        }
        return index;
    }
}
