package worthsaving.repair;

import java.util.BitSet;
import java.util.Optional;
import worthsaving.repair.CoverSearch.Cover;

/**
 * The cheapest work for sets of items that are given by their positions in one list. It keeps the place it works
 * in from one set to the next: one for each thread.
 */
public final class PatternPlanner {

    private final PlanTables tables;
    private final int[] index;
    private final CoverSearch search;
    private final long[] left;
    private final int[] group;
    private final long[] jobs;
    private final long[] paid;

    /** @param index by position: the item's number in the tables */
    PatternPlanner(PlanTables tables, int[] index) {
        this.tables = tables;
        this.index = index;
        search = new CoverSearch(tables.table, tables.easing);
        left = Bits.ofSize(tables.table.items.length);
        group = new int[tables.table.items.length];
        jobs = Bits.ofSize(tables.table.jobs.length);
        paid = Bits.ofSize(tables.table.access.size());
    }

    /**
     * @param pattern positions of the failed items in the list
     * @return empty when nothing allowed mends all of them
     */
    public Optional<RepairWork> work(BitSet pattern) {
        Bits.clear(left);
        for (int i = pattern.nextSetBit(0); i >= 0; i = pattern.nextSetBit(i + 1)) {
            Bits.set(left, index[i]);
        }
        if (Bits.intersect(left, tables.unmendable)) {
            return Optional.empty();
        }
        Bits.clear(jobs);
        Bits.clear(paid);
        for (int size = tables.groups.take(left, group); size > 0; size = tables.groups.take(left, group)) {
            Cover cover = size == 1 ? alone(group[0]) : search.cover(group, size);
            Bits.or(jobs, cover.jobs());
            Bits.or(paid, cover.paid());
        }
        return Optional.of(tables.writer.work(jobs, paid));
    }

    /** Items that share nothing with what else has failed are the rule, and soon all known. */
    private Cover alone(int item) {
        Cover known = tables.alone.get(item);
        if (known == null) {
            known = search.cover(group, 1);
            tables.alone.set(item, known);
        }
        return known;
    }
}
