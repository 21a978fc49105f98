package worthsaving.deal;

import java.util.List;
import worthsaving.quantity.Range;
import worthsaving.repair.RepairPlan;
import worthsaving.repair.WorkParts;

/**
 * What the plans of one car are put together from, made ready for drawing when first needed. A part's slot is
 * its number among the jobs, then the access steps, then the tools.
 */
final class DrawnParts {

    /**
     * A job in any plan.
     *
     * @param reach by access step of the parts: whether the job needs it
     * @param luck levels that decide whether it has to be done again
     */
    record Job(DrawnRange parts, DrawnRange consumables, DrawnRange hours, boolean[] reach, char[] luck, double fails,
            double comesBack) {}

    /**
     * An access step as some plans pay it.
     *
     * @param again when a job behind it has to be done again
     */
    record Step(DrawnRange hours, DrawnRange again) {}

    private final WorkParts parts;
    private final Labour labour;
    private final QuasiPoints points;
    private final PertTable pert;
    private final Job[] jobs;
    private final Step[] access;
    private final DrawnRange[] tools;

    DrawnParts(WorkParts parts, Labour labour, QuasiPoints points, PertTable pert) {
        this.parts = parts;
        this.labour = labour;
        this.points = points;
        this.pert = pert;
        jobs = new Job[parts.jobs().size()];
        access = new Step[parts.access().size()];
        tools = new DrawnRange[parts.tools().size()];
    }

    int slots() {
        return jobs.length + access.length + tools.length;
    }

    int accessSlot(int step) {
        return jobs.length + step;
    }

    int toolSlot(int tool) {
        return jobs.length + access.length + tool;
    }

    int jobs() {
        return jobs.length;
    }

    int accessSteps() {
        return access.length;
    }

    int tools() {
        return tools.length;
    }

    Job job(int at) {
        Job ready = jobs[at];
        if (ready == null) {
            ready = drawn(parts.jobs().get(at));
            jobs[at] = ready;
        }
        return ready;
    }

    Step access(int at) {
        Step ready = access[at];
        if (ready == null) {
            RepairPlan.PaidStep step = parts.access().get(at);
            DrawnRange hours = hours(step.hours().hours(), step.id(), "access:");
            ready = new Step(hours, step.again().equals(step.hours()) ? hours
                    : hours(step.again().hours(), step.id(), "access:"));
            access[at] = ready;
        }
        return ready;
    }

    DrawnRange tool(int at) {
        DrawnRange ready = tools[at];
        if (ready == null) {
            RepairPlan.Purchase tool = parts.tools().get(at);
            ready = pert.draw(tool.price().amount(), points.column("tool:" + tool.tool()));
            tools[at] = ready;
        }
        return ready;
    }

    private Job drawn(RepairPlan.Job job) {
        char[] price = points.column("parts:" + job.id());
        List<RepairPlan.PaidStep> steps = parts.access();
        boolean[] reach = new boolean[steps.size()];
        for (int s = 0; s < reach.length; s++) {
            reach[s] = job.access().contains(steps.get(s).id());
        }
        return new Job(
                pert.draw(job.parts().amount(), price),
                pert.draw(job.consumables().amount(), price),
                hours(job.hours().hours(), job.id(), "hours:"),
                reach,
                points.column("luck:" + job.id()),
                1 - job.success().value(),
                job.success().value() * job.comeback().value());
    }

    private DrawnRange hours(Range book, String id, String column) {
        return pert.draw(book.times(labour.factor().applyAsDouble(id)), points.column(column + id));
    }
}
