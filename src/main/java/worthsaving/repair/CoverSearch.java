package worthsaving.repair;

import java.util.Arrays;
import java.util.BitSet;
import worthsaving.repair.JobTable.Entry;

/**
 * The cheapest set of jobs that closes a group of items, exactly: a weighted set cover with shared
 * fixed costs (steps and tools, paid once). Every choice of easing steps to pay is gone through; with
 * that choice fixed each step has one price, and branch and bound covers the items.
 *
 * <p>The bound on what is still to pay is the sum over open items of the least direct cost per item
 * closed (the usual dual bound of set cover) plus the dearest, over open items, of the least access
 * and tools still unpaid. Both hold together because direct and shared costs are disjoint.
 */
final class CoverSearch {

    /** The jobs chosen, as ascending indices, and the steps paid for, easing ones included. */
    record Cover(int[] jobs, BitSet paid) {}

    private final JobTable table;
    private final Entry[] jobs;
    private final int[] jobIndex;
    /** Items closed by each job, as positions in the group; jobs that close each item. */
    private final int[][] closes;
    private final int[][] closedBy;
    private final int[][] steps;
    private final double[] stepCost;
    private final int[] paid;
    private final int[] bought;
    private final int[] covered;
    /** Above zero while a job is out of the question in this part of the search. */
    private final int[] barred;
    private final boolean[] chosen;
    private BitSet easingPaid;
    private double best = Double.POSITIVE_INFINITY;
    private boolean[] bestChosen;
    private BitSet bestEasing;

    /** @param items indices of the items, each closed by some job of the table */
    CoverSearch(JobTable table, int[] items) {
        this.table = table;
        jobIndex = Arrays.stream(items).flatMap(i -> Arrays.stream(table.closedBy[i])).distinct().sorted().toArray();
        jobs = Arrays.stream(jobIndex).mapToObj(j -> table.jobs[j]).toArray(Entry[]::new);
        closes = new int[jobs.length][];
        steps = new int[jobs.length][];
        for (int j = 0; j < jobs.length; j++) {
            closes[j] = positions(jobs[j].closes(), items);
            steps[j] = jobs[j].access().stream().toArray();
        }
        closedBy = new int[items.length][];
        for (int i = 0; i < items.length; i++) {
            closedBy[i] = positions(table.closedBy[items[i]], jobIndex);
        }
        stepCost = new double[table.access.size()];
        paid = new int[table.access.size()];
        bought = new int[table.tools.length];
        covered = new int[items.length];
        barred = new int[jobs.length];
        chosen = new boolean[jobs.length];
    }

    /** Positions in ascending {@code where} of those of {@code what} that are there. */
    private static int[] positions(int[] what, int[] where) {
        return Arrays.stream(what).map(w -> Arrays.binarySearch(where, w)).filter(p -> p >= 0).toArray();
    }

    Cover run() {
        BitSet reach = new BitSet();
        for (Entry job : jobs) {
            reach.or(job.access());
        }
        int[] easing = table.access.widenByEasing(reach).stream().toArray();
        for (int choice = 0; choice < 1 << easing.length; choice++) {
            tryEasing(easing, choice, reach);
        }
        BitSet allPaid = (BitSet) bestEasing.clone();
        int[] picked = new int[jobs.length];
        int count = 0;
        for (int j = 0; j < jobs.length; j++) {
            if (bestChosen[j]) {
                picked[count++] = jobIndex[j];
                allPaid.or(jobs[j].access());
            }
        }
        return new Cover(Arrays.copyOf(picked, count), allPaid);
    }

    private void tryEasing(int[] easing, int choice, BitSet reach) {
        BitSet all = new BitSet();
        BitSet out = new BitSet();
        for (int e = 0; e < easing.length; e++) {
            if ((choice >> e & 1) == 0) {
                out.set(easing[e]);
                continue;
            }
            for (int s : table.access.closure[easing[e]]) {
                all.set(s);
            }
        }
        if (all.intersects(out)) {
            return;
        }
        Arrays.fill(paid, 0);
        double cost = 0;
        for (int s = reach.nextSetBit(0); s >= 0; s = reach.nextSetBit(s + 1)) {
            stepCost[s] = table.access.hours[s] * table.access.factor(s, all) * table.rate;
            if (all.get(s)) {
                paid[s] = 1;
                cost += stepCost[s];
            }
        }
        for (int j = 0; j < jobs.length; j++) {
            barred[j] = jobs[j].access().intersects(out) ? 1 : 0;
        }
        easingPaid = all;
        search(cost);
    }

    private void search(double cost) {
        int next = -1;
        int fewest = Integer.MAX_VALUE;
        double directBound = 0;
        double sharedBound = 0;
        for (int i = 0; i < covered.length; i++) {
            if (covered[i] > 0) {
                continue;
            }
            int open = 0;
            double direct = Double.POSITIVE_INFINITY;
            double shared = Double.POSITIVE_INFINITY;
            for (int j : closedBy[i]) {
                if (barred[j] == 0) {
                    open++;
                    direct = Math.min(direct, jobs[j].direct() / openItems(j));
                    shared = Math.min(shared, unpaid(j));
                }
            }
            if (open < fewest) {
                fewest = open;
                next = i;
            }
            directBound += direct;
            sharedBound = Math.max(sharedBound, shared);
        }
        if (next < 0) {
            if (cost < best) {
                best = cost;
                bestChosen = chosen.clone();
                bestEasing = easingPaid;
            }
        } else if (fewest > 0 && cost + directBound + sharedBound < best) {
            branch(next, cost);
        }
    }

    private void branch(int item, double cost) {
        int[] tried = new int[closedBy[item].length];
        int count = 0;
        for (int j = cheapest(item); j >= 0; j = cheapest(item)) {
            double more = jobs[j].direct() + unpaid(j);
            put(j, 1);
            search(cost + more);
            put(j, -1);
            // Every set with this job has now been seen, so it is out for the rest of this branch.
            barred[j]++;
            tried[count++] = j;
        }
        for (int t = 0; t < count; t++) {
            barred[tried[t]]--;
        }
    }

    private int cheapest(int item) {
        int found = -1;
        double least = Double.POSITIVE_INFINITY;
        for (int j : closedBy[item]) {
            if (barred[j] == 0) {
                double cost = (jobs[j].direct() + unpaid(j)) / openItems(j);
                if (cost < least) {
                    least = cost;
                    found = j;
                }
            }
        }
        return found;
    }

    private int openItems(int job) {
        int open = 0;
        for (int i : closes[job]) {
            if (covered[i] == 0) {
                open++;
            }
        }
        return open;
    }

    private double unpaid(int job) {
        double sum = 0;
        for (int s : steps[job]) {
            if (paid[s] == 0) {
                sum += stepCost[s];
            }
        }
        for (int t : jobs[job].tools()) {
            if (bought[t] == 0) {
                sum += table.toolPrice[t];
            }
        }
        return sum;
    }

    private void put(int job, int sign) {
        chosen[job] = sign > 0;
        for (int s : steps[job]) {
            paid[s] += sign;
        }
        for (int t : jobs[job].tools()) {
            bought[t] += sign;
        }
        for (int i : closes[job]) {
            covered[i] += sign;
        }
    }
}
