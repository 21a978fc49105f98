package worthsaving.deal;

import java.util.Arrays;
import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import worthsaving.quantity.Range;
import worthsaving.repair.RepairPlan;
import worthsaving.repair.RepairWork;

/**
 * Makes the plans of one car ready for drawing. A job, step or tool that many plans share, as the same
 * object, is made ready once.
 */
final class PlanDraws {

    private record Step(int number, DrawnRange hours) {}

    private final Labour labour;
    private final QuasiPoints points;
    private final PertTable pert;
    private final Map<String, Integer> numbers = new HashMap<>();
    private final Map<RepairPlan.PaidStep, Step> steps = new IdentityHashMap<>();
    private final Map<RepairPlan.Job, PlanDraw.Job> jobs = new IdentityHashMap<>();
    private final Map<RepairPlan.Purchase, DrawnRange> tools = new IdentityHashMap<>();

    PlanDraws(Labour labour, QuasiPoints points, PertTable pert) {
        this.labour = labour;
        this.points = points;
        this.pert = pert;
    }

    PlanDraw of(RepairWork plan) {
        List<Step> paid = plan.access().stream().map(s -> steps.computeIfAbsent(s, this::step)).toList();
        PlanDraw.Job[] ready =
                plan.jobs().stream().map(j -> jobs.computeIfAbsent(j, this::job)).toArray(PlanDraw.Job[]::new);
        DrawnRange[] bought = plan.toolsToBuy().stream()
                .map(t -> tools.computeIfAbsent(t, this::tool))
                .toArray(DrawnRange[]::new);
        DrawnRange[] byNumber = new DrawnRange[numbers.size()];
        paid.forEach(step -> byNumber[step.number()] = step.hours());
        DrawnRange[][] reach = new DrawnRange[ready.length][];
        Arrays.setAll(reach, j -> Arrays.stream(ready[j].reach())
                .mapToObj(n -> byNumber[n])
                .filter(Objects::nonNull)
                .toArray(DrawnRange[]::new));
        return new PlanDraw(bought, paid.stream().map(Step::hours).toArray(DrawnRange[]::new), ready, reach);
    }

    private Step step(RepairPlan.PaidStep step) {
        return new Step(number(step.id()), hours(step.hours().hours(), step.id(), "access:"));
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
