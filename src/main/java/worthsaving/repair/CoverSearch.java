package worthsaving.repair;

import java.util.Arrays;

/**
 * The cheapest set of jobs that closes a group of items, exactly: a weighted set cover with shared
 * fixed costs (steps and tools, paid once). Every choice of easing steps to pay is gone through; with that
 * choice fixed each step has one price. A job that by itself costs more than closing its items one by one,
 * access included, is in no cheapest set; where this leaves an item one job, that is taken at once, and branch
 * and bound covers the rest. Serves many groups one after the other, in one thread.
 */
final class CoverSearch {

    /**
     * What closes a group.
     *
     * @param jobs those chosen
     * @param paid the steps they need, and the easing ones with what these require
     */
    record Cover(long[] jobs, long[] paid) {}

    private final JobTable table;
    private final Easing.Choices choices;
    private final OpenItems open;
    /** By job that closes several items: what closing those of the group one by one costs at most. */
    private final double[] oneByOne;
    private final int[] shared;
    private final int[] taken;
    private final int[] left;
    private double best;
    private int[] bestJobs;
    private Easing bestEasing;

    CoverSearch(JobTable table, Easing.Choices choices) {
        this.table = table;
        this.choices = choices;
        open = new OpenItems(table);
        oneByOne = new double[table.jobs.length];
        shared = new int[table.jobs.length];
        taken = new int[table.items.length];
        left = new int[table.items.length];
    }

    /** @param group from the front, the items to close, each closed by some job of the table */
    Cover cover(int[] group, int size) {
        best = Double.POSITIVE_INFINITY;
        int easers = 0;
        for (int k = 0; k < size; k++) {
            easers |= choices.ofItem(group[k]);
        }
        for (int choice = 0; choice >= 0; choice = choice == easers ? -1 : choice - easers & easers) {
            Easing easing = choices.get(choice);
            if (easing.possible && easing.paidCost < best) {
                attempt(easing, group, size);
            }
        }
        long[] jobs = Bits.ofSize(table.jobs.length);
        long[] paid = Bits.ofSize(table.access.size());
        for (int s : bestEasing.paid) {
            Bits.set(paid, s);
        }
        for (int j : bestJobs) {
            Bits.set(jobs, j);
            Bits.or(paid, table.accessOf[j]);
        }
        return new Cover(jobs, paid);
    }

    private void attempt(Easing easing, int[] group, int size) {
        open.begin(easing, group, size);
        int sharing = barDear(easing, group, size);
        double cost = easing.paidCost;
        int takenCount = 0;
        int leftCount = 0;
        for (int k = 0; k < size && cost < best; k++) {
            int only = open.only(group[k]);
            if (only >= 0) {
                cost += open.take(only);
                taken[takenCount++] = only;
            } else {
                left[leftCount++] = group[k];
            }
        }
        int[] more = cost < best ? open.cheapest(left, leftCount, best - cost) : null;
        if (more != null) {
            best = cost + open.cost();
            bestJobs = Arrays.copyOf(more, more.length + takenCount);
            System.arraycopy(taken, 0, bestJobs, more.length, takenCount);
            bestEasing = easing;
        }
        open.end(group, size, shared, sharing);
    }

    /** @return how many jobs that close several items close some of the group, in {@link #shared} */
    private int barDear(Easing easing, int[] group, int size) {
        int count = 0;
        for (int k = 0; k < size; k++) {
            for (int j : easing.multis[group[k]]) {
                if (open.addOpen(j)) {
                    shared[count++] = j;
                    oneByOne[j] = 0;
                }
                oneByOne[j] += easing.alone[group[k]];
            }
        }
        for (int k = 0; k < count; k++) {
            if (table.direct[shared[k]] > oneByOne[shared[k]]) {
                open.bar(shared[k]);
            }
        }
        return count;
    }
}
