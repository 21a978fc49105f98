package worthsaving.repair;

import java.util.Arrays;
import java.util.BitSet;
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

    /** @param cost of the jobs, with the steps and tools that were not paid before */
    record Found(double cost, int[] jobs) {}

    private final JobTable table;
    private final int[] jobIndex;
    private final double[] direct;
    /** Items closed by each job, as positions; jobs that close each item, as positions. */
    private final int[][] closes;
    private final int[][] closedBy;
    private final int[] openOf;
    private final boolean[] chosen;
    /** Above zero while a job is out of the question in this part of the search. */
    private final int[] barred;
    private final int[] covered;
    private final int[] paid;
    private final int[] bought;
    private double[] stepCost;
    private double best;
    private boolean[] bestChosen;

    OpenItems(JobTable table, BitSet items) {
        this.table = table;
        int[] item = Indices.of(items);
        BitSet jobs = new BitSet();
        for (int i : item) {
            for (int j : table.closedBy[i]) {
                jobs.set(j);
            }
        }
        jobIndex = Indices.of(jobs);
        direct = new double[jobIndex.length];
        closes = new int[jobIndex.length][];
        openOf = new int[jobIndex.length];
        for (int j = 0; j < jobIndex.length; j++) {
            Entry entry = table.jobs[jobIndex[j]];
            direct[j] = entry.direct();
            closes[j] = Indices.positions(entry.closes(), item);
            openOf[j] = closes[j].length;
        }
        closedBy = new int[item.length][];
        for (int i = 0; i < item.length; i++) {
            closedBy[i] = Indices.positions(table.closedBy[item[i]], jobIndex);
        }
        chosen = new boolean[jobIndex.length];
        barred = new int[jobIndex.length];
        covered = new int[item.length];
        paid = new int[table.access.size()];
        bought = new int[table.tools.length];
    }

    /**
     * @param stepCost by step
     * @param paidBefore steps that cost nothing more
     * @param boughtBefore tools that cost nothing more
     * @param out steps that may not be paid
     * @param limit only what is cheaper counts
     * @return null when nothing is
     */
    Found cheapest(double[] stepCost, BitSet paidBefore, BitSet boughtBefore, BitSet out, double limit) {
        this.stepCost = stepCost;
        best = limit;
        bestChosen = null;
        for (int s = 0; s < paid.length; s++) {
            paid[s] = paidBefore.get(s) ? 1 : 0;
        }
        for (int t = 0; t < bought.length; t++) {
            bought[t] = boughtBefore.get(t) ? 1 : 0;
        }
        for (int j = 0; j < jobIndex.length; j++) {
            barred[j] = table.jobs[jobIndex[j]].access().intersects(out) ? 1 : 0;
        }
        search(0);
        if (bestChosen == null) {
            return null;
        }
        int[] jobs = new int[jobIndex.length];
        int count = 0;
        for (int j = 0; j < jobs.length; j++) {
            if (bestChosen[j]) {
                jobs[count++] = jobIndex[j];
            }
        }
        return new Found(best, Arrays.copyOf(jobs, count));
    }

    private void search(double cost) {
        double[] unpaid = new double[direct.length];
        for (int j = 0; j < unpaid.length; j++) {
            if (barred[j] == 0 && openOf[j] > 0) {
                unpaid[j] = unpaid(j);
            }
        }
        boolean[] dropped = drop(unpaid);
        int next = -1;
        int fewest = Integer.MAX_VALUE;
        int most = 0;
        double directBound = 0;
        double sharedBound = 0;
        for (int i = 0; i < covered.length; i++) {
            if (covered[i] > 0) {
                continue;
            }
            int jobs = 0;
            double least = Double.POSITIVE_INFINITY;
            double shared = Double.POSITIVE_INFINITY;
            for (int j : closedBy[i]) {
                if (barred[j] == 0) {
                    jobs++;
                    least = Math.min(least, direct[j] / openOf[j]);
                    shared = Math.min(shared, unpaid[j]);
                }
            }
            if (jobs < fewest) {
                fewest = jobs;
                next = i;
            }
            most = Math.max(most, jobs);
            directBound += least;
            sharedBound = Math.max(sharedBound, shared);
        }
        if (next < 0) {
            if (cost < best) {
                best = cost;
                bestChosen = chosen.clone();
            }
        } else if (fewest > 0 && cost + directBound + sharedBound < best) {
            if (most == 1) {
                takeAll(cost);
            } else {
                branch(next, cost, unpaid);
            }
        }
        for (int j = 0; j < dropped.length; j++) {
            barred[j] -= dropped[j] ? 1 : 0;
        }
    }

    /** Every open item has one job left: most failure patterns are at this point as soon as the dear units are dropped. */
    private void takeAll(double cost) {
        double sum = cost;
        int[] taken = new int[covered.length];
        int count = 0;
        for (int i = 0; i < covered.length; i++) {
            if (covered[i] == 0) {
                int j = only(i);
                sum += direct[j] + unpaid(j);
                put(j, 1);
                taken[count++] = j;
            }
        }
        if (sum < best) {
            best = sum;
            bestChosen = chosen.clone();
        }
        while (count > 0) {
            put(taken[--count], -1);
        }
    }

    private int only(int item) {
        for (int j : closedBy[item]) {
            if (barred[j] == 0) {
                return j;
            }
        }
        throw new IllegalStateException("no job is left for an open item");
    }

    /** Bars jobs dearer by themselves than closing each of their open items alone. */
    private boolean[] drop(double[] unpaid) {
        double[] alone = new double[covered.length];
        Arrays.fill(alone, Double.POSITIVE_INFINITY);
        for (int j = 0; j < unpaid.length; j++) {
            if (barred[j] == 0 && openOf[j] == 1) {
                for (int i : closes[j]) {
                    alone[i] = Math.min(alone[i], direct[j] + unpaid[j]);
                }
            }
        }
        boolean[] dropped = new boolean[unpaid.length];
        for (int j = 0; j < unpaid.length; j++) {
            if (barred[j] == 0 && openOf[j] > 1) {
                double each = 0;
                for (int i : closes[j]) {
                    each += covered[i] == 0 ? alone[i] : 0;
                }
                dropped[j] = direct[j] > each;
                barred[j] += dropped[j] ? 1 : 0;
            }
        }
        return dropped;
    }

    private void branch(int item, double cost, double[] unpaid) {
        int[] jobs = closedBy[item];
        boolean[] tried = new boolean[jobs.length];
        for (int k = cheapest(jobs, unpaid); k >= 0; k = cheapest(jobs, unpaid)) {
            int j = jobs[k];
            put(j, 1);
            search(cost + direct[j] + unpaid[j]);
            put(j, -1);
            // Every set with this job has now been seen, so it is out for the rest of this branch.
            barred[j]++;
            tried[k] = true;
        }
        for (int k = 0; k < jobs.length; k++) {
            barred[jobs[k]] -= tried[k] ? 1 : 0;
        }
    }

    private int cheapest(int[] among, double[] unpaid) {
        int found = -1;
        double least = Double.POSITIVE_INFINITY;
        for (int k = 0; k < among.length; k++) {
            int j = among[k];
            if (barred[j] == 0) {
                double cost = (direct[j] + unpaid[j]) / openOf[j];
                if (cost < least) {
                    least = cost;
                    found = k;
                }
            }
        }
        return found;
    }

    private double unpaid(int job) {
        Entry entry = table.jobs[jobIndex[job]];
        double sum = 0;
        for (int s : entry.steps()) {
            if (paid[s] == 0) {
                sum += stepCost[s];
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
        Entry entry = table.jobs[jobIndex[job]];
        chosen[job] = sign > 0;
        for (int s : entry.steps()) {
            paid[s] += sign;
        }
        for (int t : entry.tools()) {
            bought[t] += sign;
        }
        for (int i : closes[job]) {
            boolean was = covered[i] == 0;
            covered[i] += sign;
            if (was != (covered[i] == 0)) {
                for (int j : closedBy[i]) {
                    openOf[j] -= sign;
                }
            }
        }
    }
}
