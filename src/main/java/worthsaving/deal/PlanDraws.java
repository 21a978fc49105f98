package worthsaving.deal;

import java.util.BitSet;
import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.Map;
import worthsaving.quantity.Range;
import worthsaving.repair.RepairPlan;
import worthsaving.repair.RepairWork;
import worthsaving.repair.WorkParts;

/** Makes the plans of one car ready for drawing. A job, step or tool that many plans share is made ready once. */
final class PlanDraws {

    /** What has been made ready of the parts that plans have in common, by position. */
    private record Ready(WorkParts parts, PlanDraw.Job[] jobs, PlanDraw.Step[] steps, DrawnRange[] tools) {

        static Ready of(WorkParts parts) {
            return new Ready(parts, new PlanDraw.Job[parts.jobs().size()], new PlanDraw.Step[parts.access().size()],
                    new DrawnRange[parts.tools().size()]);
        }
    }

    private final Labour labour;
    private final QuasiPoints points;
    private final PertTable pert;
    private final Map<String, Integer> numbers = new HashMap<>();
    private final IdentityHashMap<WorkParts, Ready> ready = new IdentityHashMap<>();

    PlanDraws(Labour labour, QuasiPoints points, PertTable pert) {
        this.labour = labour;
        this.points = points;
        this.pert = pert;
    }

    PlanDraw of(RepairWork work) {
        Ready shared = ready.computeIfAbsent(work.parts(), Ready::of);
        PlanDraw.Step[] steps = new PlanDraw.Step[work.accessCount()];
        for (int k = 0; k < steps.length; k++) {
            steps[k] = step(shared, work.access(k));
        }
        PlanDraw.Job[] jobs = new PlanDraw.Job[work.jobCount()];
        for (int k = 0; k < jobs.length; k++) {
            jobs[k] = job(shared, work.job(k));
        }
        DrawnRange[] tools = new DrawnRange[work.toolCount()];
        for (int k = 0; k < tools.length; k++) {
            tools[k] = tool(shared, work.tool(k));
        }
        return new PlanDraw(tools, steps, jobs);
    }

    private PlanDraw.Step step(Ready shared, int at) {
        if (shared.steps()[at] == null) {
            RepairPlan.PaidStep step = shared.parts().access().get(at);
            DrawnRange hours = hours(step.hours().hours(), step.id(), "access:");
            DrawnRange again = step.again().equals(step.hours()) ? hours
                    : hours(step.again().hours(), step.id(), "access:");
            shared.steps()[at] = new PlanDraw.Step(number(step.id()), hours, again);
        }
        return shared.steps()[at];
    }

    private PlanDraw.Job job(Ready shared, int at) {
        if (shared.jobs()[at] == null) {
            RepairPlan.Job job = shared.parts().jobs().get(at);
            char[] price = points.column("parts:" + job.id());
            BitSet reach = new BitSet();
            job.access().forEach(step -> reach.set(number(step)));
            shared.jobs()[at] = new PlanDraw.Job(
                    pert.draw(job.parts().amount(), price),
                    pert.draw(job.consumables().amount(), price),
                    hours(job.hours().hours(), job.id(), "hours:"),
                    reach,
                    points.column("luck:" + job.id()),
                    1 - job.success().value(),
                    job.success().value() * job.comeback().value());
        }
        return shared.jobs()[at];
    }

    private DrawnRange tool(Ready shared, int at) {
        if (shared.tools()[at] == null) {
            RepairPlan.Purchase tool = shared.parts().tools().get(at);
            shared.tools()[at] = pert.draw(tool.price().amount(), points.column("tool:" + tool.tool()));
        }
        return shared.tools()[at];
    }

    private DrawnRange hours(Range book, String id, String column) {
        return pert.draw(book.times(labour.factor().applyAsDouble(id)), points.column(column + id));
    }

    private int number(String step) {
        return numbers.computeIfAbsent(step, s -> numbers.size());
    }
}
