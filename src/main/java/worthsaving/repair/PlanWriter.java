package worthsaving.repair;

import java.util.Currency;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import worthsaving.quantity.Hours;
import worthsaving.quantity.Money;
import worthsaving.repair.JobTable.Entry;

/** Writes out the work and the plan for jobs already chosen. */
final class PlanWriter {

    private final JobTable table;
    private final WorkParts parts;

    PlanWriter(JobTable table) {
        this.table = table;
        this.parts = new WorkParts(Stream.of(table.jobs).map(Entry::job).toList(), List.of(table.access.paidSteps),
                List.of(table.purchases));
    }

    RepairPlan plan(Set<String> failed, RepairWork work) {
        Currency currency = table.shop.currency();
        return new RepairPlan(failed, work.jobs(), work.access(), work.toolsToBuy(), Hours.of(work.separateHours()),
                new Money(work.cost(), currency), Hours.of(work.hours()), new Money(work.reserve(), currency));
    }

    /**
     * @param chosen jobs
     * @param paid steps
     */
    RepairWork work(long[] chosen, long[] paid) {
        double hours = 0;
        int[] steps = Bits.members(paid);
        for (int k = 0; k < steps.length; k++) {
            int easer = table.access.easer(steps[k], paid);
            hours += table.access.hours[steps[k]] * table.access.factor(steps[k], easer);
            steps[k] = table.access.paidStep(steps[k], easer);
        }
        double separate = 0;
        double cost = hours * table.rate;
        double reserve = 0;
        int[] jobs = Bits.members(chosen);
        long[] buys = Bits.ofSize(table.tools.length);
        for (int j : jobs) {
            Entry entry = table.jobs[j];
            separate += entry.aloneHours();
            hours += entry.hours();
            cost += entry.cost();
            reserve += entry.reserve();
            for (int t : entry.tools()) {
                Bits.set(buys, t);
            }
        }
        int[] tools = Bits.members(buys);
        for (int t : tools) {
            cost += table.toolPrice[t];
        }
        return new RepairWork(parts, jobs, steps, tools, separate, hours, cost, reserve);
    }
}
