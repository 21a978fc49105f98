package worthsaving.deal;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import worthsaving.quantity.Range;
import worthsaving.repair.RepairPlan;

/**
 * A repair plan made ready for drawing: money and hours of each job at each point.
 *
 * <p>A job that does not work (chance 1 - success) is done again before the sale; one that comes back
 * (chance success x comeback) is done again after it. Doing again means the job's parts, consumables and
 * hours, and the access steps it needs, as the plan pays them.
 */
final class PlanDraw {

    /** One uncertain amount and the column that drives it. */
    private record Uncertain(Range range, char[] column) {}

    private record Job(Uncertain parts, Uncertain consumables, Uncertain hours, List<Uncertain> reach, char[] luck,
            double fails, double comesBack) {}

    private final List<Job> jobs = new ArrayList<>();
    private final List<Uncertain> access = new ArrayList<>();
    private final List<Uncertain> tools = new ArrayList<>();
    private double meanCash;
    private double meanHours;
    private double meanBackCash;
    private double meanBackHours;

    PlanDraw(RepairPlan plan, Labour labour, QuasiPoints points) {
        Map<String, Uncertain> steps = new LinkedHashMap<>();
        for (RepairPlan.PaidStep step : plan.access()) {
            Range hours = step.hours().hours().times(labour.factor().applyAsDouble(step.id()));
            steps.put(step.id(), new Uncertain(hours, points.column("access:" + step.id())));
            meanHours += hours.mean();
        }
        access.addAll(steps.values());
        for (RepairPlan.Job job : plan.jobs()) {
            char[] price = points.column("parts:" + job.id());
            Range hours = job.hours().hours().times(labour.factor().applyAsDouble(job.id()));
            List<Uncertain> reach = job.access().stream().sorted().filter(steps::containsKey).map(steps::get).toList();
            double fails = 1 - job.success().value();
            double comesBack = job.success().value() * job.comeback().value();
            jobs.add(new Job(
                    new Uncertain(job.parts().amount(), price),
                    new Uncertain(job.consumables().amount(), price),
                    new Uncertain(hours, points.column("hours:" + job.id())),
                    reach, points.column("luck:" + job.id()), fails, comesBack));
            double cash = job.parts().amount().mean() + job.consumables().amount().mean();
            double again = hours.mean() + reach.stream().mapToDouble(u -> u.range().mean()).sum();
            meanCash += (1 + fails) * cash;
            meanHours += hours.mean() + fails * again;
            meanBackCash += comesBack * cash;
            meanBackHours += comesBack * again;
        }
        for (RepairPlan.Purchase tool : plan.toolsToBuy()) {
            tools.add(new Uncertain(tool.price().amount(), points.column("tool:" + tool.tool())));
            meanCash += tool.price().amount().mean();
        }
    }

    double meanCash() {
        return meanCash;
    }

    double meanHours() {
        return meanHours;
    }

    double meanBackCash() {
        return meanBackCash;
    }

    double meanBackHours() {
        return meanBackHours;
    }

    void draw(RepairDraws into, int from, int to) {
        PertTable pert = into.pert();
        for (Uncertain tool : tools) {
            add(pert, into.cash(), from, to, tool);
        }
        for (Uncertain step : access) {
            add(pert, into.hours(), from, to, step);
        }
        for (Job job : jobs) {
            draw(job, into, from, to);
        }
    }

    private static void draw(Job job, RepairDraws into, int from, int to) {
        double[] cash = into.scratchCash();
        double[] hours = into.scratchHours();
        double[] again = into.scratchAgain();
        for (int i = from; i < to; i++) {
            cash[i] = 0;
            hours[i] = 0;
            again[i] = 0;
        }
        add(into.pert(), cash, from, to, job.parts());
        add(into.pert(), cash, from, to, job.consumables());
        add(into.pert(), hours, from, to, job.hours());
        if (job.fails() + job.comesBack() > 0) {
            job.reach().forEach(step -> add(into.pert(), again, from, to, step));
        }
        double n = job.luck().length;
        for (int i = from; i < to; i++) {
            double luck = (job.luck()[i] + 0.5) / n;
            into.cash()[i] += cash[i];
            into.hours()[i] += hours[i];
            if (luck < job.fails()) {
                into.cash()[i] += cash[i];
                into.hours()[i] += hours[i] + again[i];
            } else if (luck < job.fails() + job.comesBack()) {
                into.backCash()[i] += cash[i];
                into.backHours()[i] += hours[i] + again[i];
            }
        }
    }

    private static void add(PertTable pert, double[] sums, int from, int to, Uncertain amount) {
        Range r = amount.range();
        if (r.width() > 0) {
            pert.addTo(sums, from, to, amount.column(), r.low(), r.mode(), r.width());
        } else if (r.low() != 0) {
            for (int i = from; i < to; i++) {
                sums[i] += r.low();
            }
        }
    }
}
