package worthsaving.repair;

import java.util.BitSet;
import worthsaving.repair.JobTable.Entry;

/**
 * The cheapest set of jobs that closes a group of items, exactly: a weighted set cover with shared
 * fixed costs (steps and tools, paid once). Jobs without an alternative are taken at once. Every choice of
 * easing steps to pay is gone through; with that choice fixed each step has one price, and branch and bound
 * covers the items left.
 */
final class CoverSearch {

    /** The jobs chosen, as ascending indices, and the steps paid for, easing ones included. */
    record Cover(int[] jobs, BitSet paid) {}

    private final JobTable table;
    /** Jobs that alone close some item. */
    private final BitSet forced = new BitSet();
    private final BitSet forcedAccess = new BitSet();
    private final BitSet forcedTools = new BitSet();
    private final BitSet reach = new BitSet();
    private final BitSet easing = new BitSet();
    /** Null when the forced jobs close everything. */
    private final OpenItems open;
    private double best = Double.POSITIVE_INFINITY;
    private int[] bestJobs = {};
    private BitSet bestEasing;

    /** @param items indices of the items, each closed by some job of the table */
    CoverSearch(JobTable table, BitSet items) {
        this.table = table;
        BitSet left = (BitSet) items.clone();
        for (int i = items.nextSetBit(0); i >= 0; i = items.nextSetBit(i + 1)) {
            reach.or(table.reach[i]);
            easing.or(table.easing[i]);
            if (table.closedBy[i].length == 1) {
                force(table.closedBy[i][0], left);
            }
        }
        open = left.isEmpty() ? null : new OpenItems(table, left);
    }

    private void force(int job, BitSet left) {
        Entry entry = table.jobs[job];
        forced.set(job);
        forcedAccess.or(entry.access());
        for (int t : entry.tools()) {
            forcedTools.set(t);
        }
        for (int i : entry.closes()) {
            left.clear(i);
        }
    }

    Cover run() {
        int[] easers = Indices.of(easing);
        for (int choice = 0; choice < 1 << easers.length; choice++) {
            tryEasing(easers, choice);
        }
        for (int j : bestJobs) {
            forced.set(j);
        }
        BitSet paid = (BitSet) bestEasing.clone();
        int[] jobs = new int[forced.cardinality()];
        int count = 0;
        for (int j = forced.nextSetBit(0); j >= 0; j = forced.nextSetBit(j + 1)) {
            jobs[count++] = j;
            paid.or(table.jobs[j].access());
        }
        return new Cover(jobs, paid);
    }

    private void tryEasing(int[] easers, int choice) {
        BitSet eased = new BitSet();
        BitSet out = new BitSet();
        for (int e = 0; e < easers.length; e++) {
            if ((choice >> e & 1) == 0) {
                out.set(easers[e]);
            } else {
                eased.or(table.access.closure[easers[e]]);
            }
        }
        if (eased.intersects(out) || forcedAccess.intersects(out)) {
            return;
        }
        double[] stepCost = new double[table.access.size()];
        for (int s = reach.nextSetBit(0); s >= 0; s = reach.nextSetBit(s + 1)) {
            stepCost[s] = table.access.hours[s] * table.access.factor(s, eased) * table.rate;
        }
        BitSet paid = (BitSet) forcedAccess.clone();
        paid.or(eased);
        double cost = 0;
        for (int s = paid.nextSetBit(0); s >= 0; s = paid.nextSetBit(s + 1)) {
            cost += stepCost[s];
        }
        for (int t = forcedTools.nextSetBit(0); t >= 0; t = forcedTools.nextSetBit(t + 1)) {
            cost += table.toolPrice[t];
        }
        for (int j = forced.nextSetBit(0); j >= 0; j = forced.nextSetBit(j + 1)) {
            cost += table.jobs[j].direct();
        }
        if (cost < best && open == null) {
            best = cost;
            bestEasing = eased;
        } else if (cost < best) {
            OpenItems.Found found = open.cheapest(stepCost, paid, forcedTools, out, best - cost);
            if (found != null) {
                best = cost + found.cost();
                bestJobs = found.jobs();
                bestEasing = eased;
            }
        }
    }
}
