package worthsaving.repair;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.Currency;
import java.util.List;
import java.util.Set;
import worthsaving.quantity.Hours;
import worthsaving.quantity.Money;
import worthsaving.repair.CoverSearch.Cover;
import worthsaving.repair.JobTable.Entry;
import worthsaving.repair.RepairPlan.Job;
import worthsaving.repair.RepairPlan.PaidStep;
import worthsaving.repair.RepairPlan.Purchase;

/** Writes out the work and the plan for jobs already chosen. */
final class PlanWriter {

    private final JobTable table;

    PlanWriter(JobTable table) {
        this.table = table;
    }

    RepairPlan plan(Set<String> failed, RepairWork work) {
        Currency currency = table.shop.currency();
        return new RepairPlan(failed, work.jobs(), work.access(), work.toolsToBuy(), Hours.of(work.separateHours()),
                new Money(work.cost(), currency), Hours.of(work.hours()), new Money(work.reserve(), currency));
    }

    RepairWork work(List<Cover> covers) {
        BitSet chosen = new BitSet(table.jobs.length);
        BitSet paid = new BitSet(table.access.size());
        for (Cover cover : covers) {
            paid.or(cover.paid());
            for (int j : cover.jobs()) {
                chosen.set(j);
            }
        }
        double hours = 0;
        PaidStep[] steps = new PaidStep[paid.cardinality()];
        int count = 0;
        for (int s = paid.nextSetBit(0); s >= 0; s = paid.nextSetBit(s + 1)) {
            int easer = table.access.easer(s, paid);
            hours += table.access.hours[s] * table.access.factor(s, easer);
            steps[count++] = table.access.paidStep(s, easer);
        }
        double separate = 0;
        double cost = hours * table.rate;
        double reserve = 0;
        Job[] jobs = new Job[chosen.cardinality()];
        BitSet buys = new BitSet(table.tools.length);
        count = 0;
        for (int j = chosen.nextSetBit(0); j >= 0; j = chosen.nextSetBit(j + 1)) {
            Entry entry = table.jobs[j];
            jobs[count++] = entry.job();
            separate += entry.aloneHours();
            hours += entry.hours();
            cost += entry.cost();
            reserve += entry.reserve();
            for (int t : entry.tools()) {
                buys.set(t);
            }
        }
        List<Purchase> purchases = new ArrayList<>(buys.cardinality());
        for (int t = buys.nextSetBit(0); t >= 0; t = buys.nextSetBit(t + 1)) {
            purchases.add(table.purchases[t]);
            cost += table.toolPrice[t];
        }
        return new RepairWork(Arrays.asList(jobs), Arrays.asList(steps), purchases, separate, hours, cost, reserve);
    }
}
