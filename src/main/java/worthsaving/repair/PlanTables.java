package worthsaving.repair;

import java.util.concurrent.atomic.AtomicReferenceArray;
import worthsaving.repair.CoverSearch.Cover;

/** What all searches of one planner share; safe to share between threads. */
final class PlanTables {

    final JobTable table;
    final Groups groups;
    final Easing.Choices easing;
    final PlanWriter writer;
    /** Items that no job closes. */
    final long[] unmendable;
    /** By item, empty until asked for; any thread finds the same. */
    final AtomicReferenceArray<Cover> alone;

    PlanTables(JobTable table) {
        this.table = table;
        groups = new Groups(table);
        easing = new Easing.Choices(table);
        writer = new PlanWriter(table);
        unmendable = Bits.ofSize(table.items.length);
        for (int i = 0; i < table.items.length; i++) {
            if (table.closedBy[i].length == 0) {
                Bits.set(unmendable, i);
            }
        }
        alone = new AtomicReferenceArray<>(table.items.length);
    }
}
