package worthsaving.repair;

import java.util.Arrays;
import worthsaving.repair.JobTable.Entry;

/**
 * Branch and bound over the items that several jobs can close, every step at one price.
 *
 * <p>The bound on what is still to pay is the sum over open items of the least direct cost per item
 * closed (the usual dual bound of set cover) plus the dearest, over open items, of the least access
 * and tools still unpaid. Both hold together because direct and shared costs are disjoint. A job that by
 * itself costs more than closing its open items one by one, access included, is in no cheapest set.
 */
final class OpenItems {

    private static final int[] NONE = {};

    private final JobTable table;
    private final int[] openOf;
    /** Above zero while a job is out of the question in this part of the search. */
    private final int[] barred;
    /** Above zero while an item is closed or not asked for. */
    private final int[] covered;
    private final int[] paid;
    private final int[] bought;
    /** The jobs put on the way to this part of the search. */
    private final int[] put;
    private final double[] alone;
    /** By depth of the search: unpaid access and tools of each job, and the jobs dropped there. */
    private double[][] unpaidAt = {};
    private int[][] droppedAt = {};
    private Easing easing;
    private int[] items;
    private int itemCount;
    private int[] jobs;
    private int jobCount;
    private double best;
    private int[] bestJobs;

    OpenItems(JobTable table) {
        this.table = table;
        openOf = new int[table.jobs.length];
        barred = new int[table.jobs.length];
        covered = new int[table.items.length];
        Arrays.fill(covered, 1);
        paid = new int[table.access.size()];
        bought = new int[table.tools.length];
        put = new int[table.items.length];
        alone = new double[table.items.length];
        jobs = new int[table.jobs.length];
    }

    /** Nothing is closed, and nothing paid but the easing steps. */
    void begin(Easing chosen, int[] group, int size) {
        easing = chosen;
        Arrays.fill(paid, 0);
        Arrays.fill(bought, 0);
        for (int s : chosen.paid) {
            paid[s] = 1;
        }
        for (int k = 0; k < size; k++) {
            covered[group[k]] = 0;
            for (int j : chosen.singles[group[k]]) {
                openOf[j] = 1;
            }
        }
    }

    /** Leaves no trace for the next search. */
    void end(int[] group, int size, int[] sharing, int sharingCount) {
        for (int k = 0; k < size; k++) {
            covered[group[k]] = 1;
        }
        for (int k = 0; k < sharingCount; k++) {
            openOf[sharing[k]] = 0;
            barred[sharing[k]] = 0;
        }
    }

    /** One more open item of a job; true when it is the first. */
    boolean addOpen(int job) {
        return openOf[job]++ == 0;
    }

    void bar(int job) {
        barred[job]++;
    }

    /** The one job that may close an item, -1 when several may or none. */
    int only(int item) {
        int[] singles = easing.singles[item];
        if (singles.length != 1) {
            return -1;
        }
        for (int j : easing.multis[item]) {
            if (barred[j] == 0) {
                return -1;
            }
        }
        return singles[0];
    }

    /** @return what the job costs with what it needs and is not paid yet */
    double take(int job) {
        double cost = table.direct[job] + unpaid(job);
        put(job, 1);
        return cost;
    }

    /**
     * @param left from the front, the items still open
     * @param limit only what is cheaper counts
     * @return null when nothing is
     */
    int[] cheapest(int[] left, int count, double limit) {
        best = limit;
        bestJobs = null;
        if (count == 0) {
            best = 0;
            return NONE;
        }
        items = left;
        itemCount = count;
        gatherJobs();
        if (unpaidAt.length <= count) {
            unpaidAt = new double[count + 1][table.jobs.length];
            droppedAt = new int[count + 1][table.jobs.length];
        }
        search(0, 0);
        return bestJobs;
    }

    /** Of the last {@link #cheapest}. */
    double cost() {
        return best;
    }

    private void gatherJobs() {
        jobCount = 0;
        for (int k = 0; k < itemCount; k++) {
            for (int j : easing.singles[items[k]]) {
                jobs[jobCount++] = j;
            }
        }
        int singles = jobCount;
        for (int k = 0; k < itemCount; k++) {
            for (int j : easing.multis[items[k]]) {
                if (barred[j] == 0 && !among(j, singles)) {
                    jobs[jobCount++] = j;
                }
            }
        }
    }

    private boolean among(int job, int from) {
        for (int a = from; a < jobCount; a++) {
            if (jobs[a] == job) {
                return true;
            }
        }
        return false;
    }

    private void search(int depth, double cost) {
        double[] unpaid = unpaidAt[depth];
        for (int a = 0; a < jobCount; a++) {
            int j = jobs[a];
            if (barred[j] == 0 && openOf[j] > 0) {
                unpaid[j] = unpaid(j);
            }
        }
        int dropped = drop(unpaid, droppedAt[depth]);
        int next = -1;
        int fewest = Integer.MAX_VALUE;
        int most = 0;
        double directBound = 0;
        double sharedBound = 0;
        for (int k = 0; k < itemCount; k++) {
            int i = items[k];
            if (covered[i] > 0) {
                continue;
            }
            int count = 0;
            double least = Double.POSITIVE_INFINITY;
            double shared = Double.POSITIVE_INFINITY;
            for (int j : easing.closers[i]) {
                if (barred[j] == 0) {
                    count++;
                    least = Math.min(least, table.direct[j] / openOf[j]);
                    shared = Math.min(shared, unpaid[j]);
                }
            }
            if (count < fewest) {
                fewest = count;
                next = i;
            }
            most = Math.max(most, count);
            directBound += least;
            sharedBound = Math.max(sharedBound, shared);
        }
        if (next < 0) {
            keep(depth, cost);
        } else if (fewest > 0 && cost + directBound + sharedBound < best) {
            if (most == 1) {
                takeAll(depth, cost);
            } else {
                branch(next, depth, cost, unpaid);
            }
        }
        for (int d = 0; d < dropped; d++) {
            barred[droppedAt[depth][d]]--;
        }
    }

    private void keep(int count, double cost) {
        if (cost < best) {
            best = cost;
            bestJobs = Arrays.copyOf(put, count);
        }
    }

    /** Every open item has one job left: most failure patterns are at this point as soon as the dear units are dropped. */
    private void takeAll(int depth, double cost) {
        double sum = cost;
        int count = depth;
        for (int k = 0; k < itemCount; k++) {
            if (covered[items[k]] == 0) {
                int j = onlyLeft(items[k]);
                put[count++] = j;
                sum += take(j);
            }
        }
        keep(count, sum);
        while (count > depth) {
            put(put[--count], -1);
        }
    }

    private int onlyLeft(int item) {
        for (int j : easing.closers[item]) {
            if (barred[j] == 0) {
                return j;
            }
        }
        throw new IllegalStateException("no job is left for an open item");
    }

    /** Bars jobs dearer by themselves than closing each of their open items alone; gives their number. */
    private int drop(double[] unpaid, int[] dropped) {
        for (int k = 0; k < itemCount; k++) {
            alone[items[k]] = Double.POSITIVE_INFINITY;
        }
        boolean several = false;
        for (int a = 0; a < jobCount; a++) {
            int j = jobs[a];
            if (barred[j] == 0 && openOf[j] == 1) {
                int i = openItem(j);
                alone[i] = Math.min(alone[i], table.direct[j] + unpaid[j]);
            } else {
                several |= openOf[j] > 1;
            }
        }
        int count = 0;
        for (int a = 0; a < jobCount && several; a++) {
            int j = jobs[a];
            if (barred[j] == 0 && openOf[j] > 1) {
                double each = 0;
                for (int i : table.closes[j]) {
                    each += covered[i] == 0 ? alone[i] : 0;
                }
                if (table.direct[j] > each) {
                    barred[j]++;
                    dropped[count++] = j;
                }
            }
        }
        return count;
    }

    private int openItem(int job) {
        for (int i : table.closes[job]) {
            if (covered[i] == 0) {
                return i;
            }
        }
        throw new IllegalStateException("a job was said to have an open item");
    }

    private void branch(int item, int depth, double cost, double[] unpaid) {
        int[] tried = new int[easing.closers[item].length];
        int count = 0;
        for (int j = cheapest(item, unpaid); j >= 0; j = cheapest(item, unpaid)) {
            put(j, 1);
            put[depth] = j;
            search(depth + 1, cost + table.direct[j] + unpaid[j]);
            put(j, -1);
            // Every set with this job has now been seen, so it is out for the rest of this branch.
            barred[j]++;
            tried[count++] = j;
        }
        while (count > 0) {
            barred[tried[--count]]--;
        }
    }

    private int cheapest(int item, double[] unpaid) {
        int found = -1;
        double least = Double.POSITIVE_INFINITY;
        for (int j : easing.closers[item]) {
            if (barred[j] == 0) {
                double cost = (table.direct[j] + unpaid[j]) / openOf[j];
                if (cost < least) {
                    least = cost;
                    found = j;
                }
            }
        }
        return found;
    }

    private double unpaid(int job) {
        Entry entry = table.jobs[job];
        double sum = 0;
        for (int s : entry.steps()) {
            if (paid[s] == 0) {
                sum += easing.stepCost[s];
            }
        }
        for (int t : entry.tools()) {
            if (bought[t] == 0) {
                sum += table.toolPrice[t];
            }
        }
        return sum;
    }

    private void put(int job, int sign) {
        Entry entry = table.jobs[job];
        for (int s : entry.steps()) {
            paid[s] += sign;
        }
        for (int t : entry.tools()) {
            bought[t] += sign;
        }
        for (int i : table.closes[job]) {
            boolean was = covered[i] == 0;
            covered[i] += sign;
            if (was != (covered[i] == 0)) {
                for (int j : easing.closers[i]) {
                    openOf[j] -= sign;
                }
            }
        }
    }
}
