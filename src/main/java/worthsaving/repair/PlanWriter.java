package worthsaving.repair;

import java.util.ArrayList;
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
        BitSet chosen = new BitSet();
        BitSet paid = new BitSet();
        for (Cover cover : covers) {
            paid.or(cover.paid());
            for (int j : cover.jobs()) {
                chosen.set(j);
            }
        }
        List<Job> jobs = new ArrayList<>();
        BitSet buys = new BitSet();
        double separate = 0;
        double hours = table.access.hoursOf(paid);
        double cost = hours * table.rate;
        double reserve = 0;
        for (int j = chosen.nextSetBit(0); j >= 0; j = chosen.nextSetBit(j + 1)) {
            Entry entry = table.jobs[j];
            jobs.add(entry.job());
            separate += entry.aloneHours();
            hours += entry.hours();
            cost += entry.cost();
            reserve += entry.reserve();
            for (int t : entry.tools()) {
                buys.set(t);
            }
        }
        List<Purchase> purchases = new ArrayList<>();
        for (int t = buys.nextSetBit(0); t >= 0; t = buys.nextSetBit(t + 1)) {
            purchases.add(table.purchases[t]);
            cost += table.toolPrice[t];
        }
        List<PaidStep> steps = new ArrayList<>();
        for (int s = paid.nextSetBit(0); s >= 0; s = paid.nextSetBit(s + 1)) {
            steps.add(table.access.paidStep(s, paid));
        }
        return new RepairWork(jobs, steps, purchases, separate, hours, cost, reserve);
    }
}
