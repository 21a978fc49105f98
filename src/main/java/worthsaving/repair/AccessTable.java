package worthsaving.repair;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.DoubleStream;
import worthsaving.catalog.AccessStep;
import worthsaving.quantity.HoursRange;

/** Access steps in flat arrays; a step's requirements come before it. */
final class AccessTable {

    private static final int MOST_EASING = 16;

    final AccessStep[] steps;
    /** Hours of each step at the worker's speed, no easing. */
    final double[] hours;
    /** Each step with all it requires. */
    final BitSet[] closure;
    /** Steps that make this one quicker, and by what factor; factors of 1 or more are left out. */
    final int[][] easers;
    final double[][] easing;
    /** Every step as paid without easing, then by each of its easers. */
    final RepairPlan.PaidStep[] paidSteps;
    private final int[] firstPaid;
    private final Map<String, Integer> index = new HashMap<>();

    AccessTable(List<AccessStep> catalogue, Worker worker) {
        this(catalogue, Set.of(), worker);
    }

    /** @param open ids of steps that are open, with all they require */
    AccessTable(List<AccessStep> catalogue, Set<String> open, Worker worker) {
        Map<String, AccessStep> closed = new HashMap<>();
        catalogue.forEach(step -> closed.put(step.id(), step));
        List<AccessStep> left = OpenAccess.left(catalogue, open);
        Map<String, AccessStep> byId = new HashMap<>();
        left.forEach(step -> byId.put(step.id(), step));
        List<AccessStep> ordered = new ArrayList<>();
        left.stream().sorted(Comparator.comparing(AccessStep::id)).forEach(step -> place(step, byId, ordered));
        steps = ordered.toArray(AccessStep[]::new);
        hours = new double[steps.length];
        closure = new BitSet[steps.length];
        easers = new int[steps.length][];
        easing = new double[steps.length][];
        firstPaid = new int[steps.length];
        List<RepairPlan.PaidStep> all = new ArrayList<>();
        BitSet easingSteps = new BitSet();
        for (int s = 0; s < steps.length; s++) {
            hours[s] = steps[s].hours().mean().value() * worker.factor(steps[s].id());
            closure[s] = union(steps[s].requires());
            closure[s].set(s);
            Map<String, Double> eased = steps[s].easedBy();
            easers[s] = eased.keySet().stream().filter(e -> eased.get(e) < 1).mapToInt(index::get).sorted().toArray();
            easing[s] = new double[easers[s].length];
            for (int e = 0; e < easers[s].length; e++) {
                easing[s][e] = eased.get(steps[easers[s][e]].id());
                easingSteps.set(easers[s][e]);
            }
            AccessStep step = steps[s];
            HoursRange again = closed.get(step.id()).hours();
            firstPaid[s] = all.size();
            DoubleStream.concat(DoubleStream.of(1), Arrays.stream(easing[s]))
                    .mapToObj(factor -> paidStep(step, factor, open.contains(step.id()) ? again : null))
                    .forEach(all::add);
        }
        paidSteps = all.toArray(RepairPlan.PaidStep[]::new);
        if (easingSteps.cardinality() > MOST_EASING) {
            throw new IllegalArgumentException("at most " + MOST_EASING + " access steps can make others quicker, not "
                    + easingSteps.cardinality());
        }
    }

    private void place(AccessStep step, Map<String, AccessStep> byId, List<AccessStep> ordered) {
        if (index.containsKey(step.id())) {
            return;
        }
        step.requires().stream().sorted().forEach(id -> place(byId.get(id), byId, ordered));
        index.put(step.id(), ordered.size());
        ordered.add(step);
    }

    int size() {
        return steps.length;
    }

    int indexOf(String id) {
        return index.get(id);
    }

    /** The named steps and all they require. */
    BitSet union(Iterable<String> ids) {
        BitSet all = new BitSet();
        for (String id : ids) {
            all.or(closure[index.get(id)]);
        }
        return all;
    }

    Set<String> ids(BitSet of) {
        return of.stream().mapToObj(s -> steps[s].id()).collect(Collectors.toUnmodifiableSet());
    }

    /** The strongest easing of a step by what is paid; several easing steps do not multiply. */
    double factor(int step, BitSet paid) {
        return factor(step, easer(step, paid));
    }

    /** @param easer as {@link #easer} gives it */
    double factor(int step, int easer) {
        return easer < 0 ? 1 : easing[step][easer];
    }

    /** @return position of the strongest paid one among the easers of the step, -1 when none is paid */
    private int easer(int step, BitSet paid) {
        return easer(step, Bits.of(paid, steps.length));
    }

    int easer(int step, long[] paid) {
        int strongest = -1;
        for (int e = 0; e < easers[step].length; e++) {
            if (Bits.get(paid, easers[step][e]) && (strongest < 0 || easing[step][e] < easing[step][strongest])) {
                strongest = e;
            }
        }
        return strongest;
    }

    /** Hours of the paid steps at the worker's speed. */
    double hoursOf(BitSet paid) {
        double sum = 0;
        for (int s = paid.nextSetBit(0); s >= 0; s = paid.nextSetBit(s + 1)) {
            sum += hours[s] * factor(s, paid);
        }
        return sum;
    }

    /** Where in {@link #paidSteps} a step stands as it is eased. */
    int paidStep(int step, int easer) {
        return firstPaid[step] + easer + 1;
    }

    /** @param again hours of a step that is open now, when it has to be opened anew; null for another */
    private static RepairPlan.PaidStep paidStep(AccessStep step, double factor, HoursRange again) {
        HoursRange hours = new HoursRange(step.hours().hours().times(factor));
        return new RepairPlan.PaidStep(step.id(), step.name(), hours, again == null ? hours : again);
    }

    /**
     * Widens a set of steps by those that could ease it and all they require, until nothing is added.
     *
     * @return the easing steps among them
     */
    BitSet widenByEasing(BitSet reach) {
        BitSet found = new BitSet();
        boolean grown = true;
        while (grown) {
            grown = false;
            for (int s : reach.stream().toArray()) {
                for (int e : easers[s]) {
                    if (!found.get(e)) {
                        found.set(e);
                        reach.or(closure[e]);
                        grown = true;
                    }
                }
            }
        }
        return found;
    }
}
