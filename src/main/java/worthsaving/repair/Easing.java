package worthsaving.repair;

import java.util.Arrays;
import java.util.BitSet;
import java.util.List;
import java.util.concurrent.atomic.AtomicReferenceArray;
import java.util.stream.IntStream;
import worthsaving.repair.JobTable.Entry;

/**
 * One choice of the steps to pay for because they make others quicker. With it every step has one price, so
 * that jobs which can be in no cheapest set are known before anything has failed.
 */
final class Easing {

    /** All choices; each is worked out when first asked for. */
    static final class Choices {

        private final JobTable table;
        private final int[] easers;
        private final int[] ofItem;
        private final AtomicReferenceArray<Easing> known;

        Choices(JobTable table) {
            this.table = table;
            BitSet all = new BitSet();
            for (BitSet some : table.easing) {
                all.or(some);
            }
            easers = all.stream().toArray();
            // Whatever eases something counts for an item that needs it, or else leaving it out would bar the jobs.
            ofItem = Arrays.stream(table.reach).mapToInt(this::choice).toArray();
            known = new AtomicReferenceArray<>(1 << easers.length);
        }

        private int choice(BitSet steps) {
            return IntStream.range(0, easers.length).filter(e -> steps.get(easers[e])).map(e -> 1 << e).sum();
        }

        /** The easing steps that what mends an item needs or could be eased by, as a choice. */
        int ofItem(int item) {
            return ofItem[item];
        }

        Easing get(int choice) {
            Easing easing = known.get(choice);
            if (easing == null) {
                easing = new Easing(table, easers, choice);
                known.set(choice, easing);
            }
            return easing;
        }
    }

    /** False when a chosen step requires one that is not chosen. */
    final boolean possible;
    final double[] stepCost;
    /** The chosen steps with all they require. */
    final int[] paid;
    final double paidCost;
    /** By item: jobs that close it alone, those left out that cost more than another would with all it needs. */
    final int[][] singles;
    /** By item: jobs that close others too. */
    final int[][] multis;
    /** By item: both of these. */
    final int[][] closers;
    /** By item: the least a job that closes it alone costs with all it needs. */
    final double[] alone;

    private Easing(JobTable table, int[] easers, int choice) {
        BitSet eased = new BitSet();
        BitSet out = new BitSet();
        for (int e = 0; e < easers.length; e++) {
            if ((choice >> e & 1) == 0) {
                out.set(easers[e]);
            } else {
                eased.or(table.access.closure[easers[e]]);
            }
        }
        possible = !eased.intersects(out);
        stepCost = new double[table.access.size()];
        Arrays.setAll(stepCost, s -> table.access.hours[s] * table.access.factor(s, eased) * table.rate);
        paid = eased.stream().toArray();
        paidCost = sum(stepCost, paid);
        double[] whole = new double[table.jobs.length];
        Arrays.setAll(whole, j -> whole(table.jobs[j], table.toolPrice));
        singles = new int[table.items.length][];
        multis = new int[table.items.length][];
        closers = new int[table.items.length][];
        alone = new double[table.items.length];
        for (int i = 0; i < table.items.length; i++) {
            List<Integer> allowed = Arrays.stream(table.closedBy[i])
                    .filter(j -> !table.jobs[j].access().intersects(out)).boxed().toList();
            double least = allowed.stream().filter(j -> table.jobs[j].closes().length == 1)
                    .mapToDouble(j -> whole[j]).min().orElse(Double.POSITIVE_INFINITY);
            alone[i] = least;
            singles[i] = allowed.stream().filter(j -> table.jobs[j].closes().length == 1)
                    .filter(j -> table.jobs[j].direct() <= least).mapToInt(Integer::intValue).toArray();
            multis[i] = allowed.stream().filter(j -> table.jobs[j].closes().length > 1)
                    .mapToInt(Integer::intValue).toArray();
            closers[i] = IntStream.concat(Arrays.stream(singles[i]), Arrays.stream(multis[i])).toArray();
        }
    }

    private double whole(Entry job, double[] toolPrice) {
        return job.direct() + sum(stepCost, job.steps()) + sum(toolPrice, job.tools());
    }

    private static double sum(double[] of, int[] which) {
        double sum = 0;
        for (int i : which) {
            sum += of[i];
        }
        return sum;
    }
}
