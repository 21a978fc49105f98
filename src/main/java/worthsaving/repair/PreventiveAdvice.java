package worthsaving.repair;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import worthsaving.quantity.Hours;
import worthsaving.quantity.Money;
import worthsaving.quantity.Probability;
import worthsaving.repair.JobTable.Entry;

/**
 * Finds what lies open once a plan is carried out, and the root causes of what it mends: parts that ride with the
 * part they protect, wherever they are.
 */
final class PreventiveAdvice {

    /** An item lies open when no more than this share of its access hours is still unpaid. */
    private static final double OPEN_SHARE = 0.25;
    /** Doing it now must save at least this share of the later cost to be worth a line. */
    private static final double LEAST_SAVING = 0.1;

    private final JobTable table;
    private final RepairPlan plan;
    private final BitSet paid;
    private final double paidHours;
    private final Set<String> bought = new HashSet<>();
    private final Set<String> closed;
    /** By root cause: the planned job that it would cost most to see killed again. */
    private final Map<String, Protected> guarded = new HashMap<>();

    /**
     * @param again chance of being killed by the cause times what doing the job again costs
     */
    private record Protected(String name, double again) {}

    PreventiveAdvice(JobTable table, RepairPlan plan) {
        this.table = table;
        this.plan = plan;
        paid = table.access.union(plan.access().stream().map(RepairPlan.PaidStep::id).toList());
        paidHours = table.access.hoursOf(paid);
        plan.toolsToBuy().forEach(tool -> bought.add(tool.tool()));
        closed = new HashSet<>(plan.failed());
        plan.jobs().forEach(job -> closed.addAll(job.closes()));
        plan.jobs().forEach(this::guard);
    }

    private void guard(RepairPlan.Job job) {
        Entry entry = table.entry(job.id());
        double alone = entry.cost() + (entry.aloneHours() - entry.hours()) * table.rate;
        for (String effect : job.closes()) {
            for (String cause : table.items[table.itemIndex.get(effect)].rootCauses()) {
                double again = table.damage(cause, effect) * alone;
                guarded.merge(cause, new Protected(job.name(), again), (a, b) -> a.again() >= b.again() ? a : b);
            }
        }
    }

    List<Preventive> advise(Map<String, Probability> needed) {
        List<Preventive> advice = new ArrayList<>();
        for (Entry entry : table.jobs) {
            String item = entry.job().id();
            boolean own = table.itemIndex.containsKey(item);
            if (own && needed.containsKey(item) && !closed.contains(item)) {
                double alone = table.access.hoursOf(entry.access());
                double added = addedAccess(entry);
                Preventive preventive = compare(entry, added, needed.get(item));
                boolean open = added <= OPEN_SHARE * alone || guarded.containsKey(item);
                if (open && preventive.breakEven().value() <= 1 - LEAST_SAVING) {
                    advice.add(preventive);
                }
            }
        }
        advice.sort(Comparator.comparing(Preventive::gain).reversed().thenComparing(Preventive::item));
        return advice;
    }

    private double addedAccess(Entry entry) {
        BitSet both = (BitSet) paid.clone();
        both.or(entry.access());
        return Math.max(0, table.access.hoursOf(both) - paidHours);
    }

    private Preventive compare(Entry entry, double addedAccess, Probability needed) {
        double fixed = entry.cost();
        for (int t : entry.tools()) {
            fixed += bought.contains(table.tools[t].id()) ? 0 : table.toolPrice[t];
        }
        double now = fixed + addedAccess * table.rate;
        Protected saved = guarded.getOrDefault(entry.job().id(), new Protected("", 0));
        double later = fixed + (entry.aloneHours() - entry.hours()) * table.rate + saved.again();
        double breakEven = later > 0 ? Math.min(1, now / later) : 1;
        return new Preventive(entry.job().id(), entry.job().name(), entry.job().partSource(), money(now), money(later),
                Hours.of(entry.hours() + addedAccess), Hours.of(entry.aloneHours()), Probability.of(breakEven),
                needed, saved.name());
    }

    private Money money(double amount) {
        return new Money(amount, plan.meanCost().currency());
    }
}
