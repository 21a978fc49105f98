package worthsaving.deal;

import java.util.Arrays;
import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.Map;
import worthsaving.quantity.Range;
import worthsaving.repair.RepairPlan;
import worthsaving.repair.RepairWork;

/**
 * Makes the plans of one car ready for drawing. A job, step or tool that many plans share, as the same
 * object, is made ready once.
 */
final class PlanDraws {

    private record Step(int number, DrawnRange hours, DrawnRange again) {}

    private final Labour labour;
    private final QuasiPoints points;
    private final PertTable pert;
    private final Map<String, Integer> numbers = new HashMap<>();
    private final IdentityHashMap<RepairPlan.PaidStep, Step> steps = new IdentityHashMap<>();
    private final IdentityHashMap<RepairPlan.Job, PlanDraw.Job> jobs = new IdentityHashMap<>();
    private final IdentityHashMap<RepairPlan.Purchase, DrawnRange> tools = new IdentityHashMap<>();

    PlanDraws(Labour labour, QuasiPoints points, PertTable pert) {
        this.labour = labour;
        this.points = points;
        this.pert = pert;
    }

    PlanDraw of(RepairWork work) {
        DrawnRange[] paid = new DrawnRange[work.access().size()];
        DrawnRange[] again = new DrawnRange[paid.length];
        int[] numberOf = new int[paid.length];
        for (int s = 0; s < paid.length; s++) {
            Step step = steps.computeIfAbsent(work.access().get(s), this::step);
            paid[s] = step.hours();
            again[s] = step.again();
            numberOf[s] = step.number();
        }
        PlanDraw.Job[] ready = new PlanDraw.Job[work.jobs().size()];
        for (int j = 0; j < ready.length; j++) {
            ready[j] = jobs.computeIfAbsent(work.jobs().get(j), this::job);
        }
        DrawnRange[] bought = new DrawnRange[work.toolsToBuy().size()];
        for (int t = 0; t < bought.length; t++) {
            bought[t] = tools.computeIfAbsent(work.toolsToBuy().get(t), this::tool);
        }
        DrawnRange[] byNumber = new DrawnRange[numbers.size()];
        for (int s = 0; s < paid.length; s++) {
            byNumber[numberOf[s]] = again[s];
        }
        DrawnRange[][] reach = new DrawnRange[ready.length][];
        for (int j = 0; j < ready.length; j++) {
            reach[j] = paidOf(ready[j].reach(), byNumber);
        }
        return new PlanDraw(bought, paid, ready, reach);
    }

    private static DrawnRange[] paidOf(int[] reach, DrawnRange[] byNumber) {
        DrawnRange[] paid = new DrawnRange[reach.length];
        int count = 0;
        for (int number : reach) {
            if (byNumber[number] != null) {
                paid[count++] = byNumber[number];
            }
        }
        return count == reach.length ? paid : Arrays.copyOf(paid, count);
    }

    private Step step(RepairPlan.PaidStep step) {
        DrawnRange hours = hours(step.hours().hours(), step.id(), "access:");
        DrawnRange again = step.again().equals(step.hours()) ? hours
                : hours(step.again().hours(), step.id(), "access:");
        return new Step(number(step.id()), hours, again);
    }

    private PlanDraw.Job job(RepairPlan.Job job) {
        char[] price = points.column("parts:" + job.id());
        return new PlanDraw.Job(
                pert.draw(job.parts().amount(), price),
                pert.draw(job.consumables().amount(), price),
                hours(job.hours().hours(), job.id(), "hours:"),
                job.access().stream().sorted().mapToInt(this::number).toArray(),
                points.column("luck:" + job.id()),
                1 - job.success().value(),
                job.success().value() * job.comeback().value());
    }

    private DrawnRange tool(RepairPlan.Purchase tool) {
        return pert.draw(tool.price().amount(), points.column("tool:" + tool.tool()));
    }

    private DrawnRange hours(Range book, String id, String column) {
        return pert.draw(book.times(labour.factor().applyAsDouble(id)), points.column(column + id));
    }

    private int number(String step) {
        return numbers.computeIfAbsent(step, s -> numbers.size());
    }
}
