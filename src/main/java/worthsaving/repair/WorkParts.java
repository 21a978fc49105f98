package worthsaving.repair;

import java.util.List;
import worthsaving.repair.RepairPlan.Job;
import worthsaving.repair.RepairPlan.PaidStep;
import worthsaving.repair.RepairPlan.Purchase;

/**
 * What the works of one planner are put together from; a work names them by their positions here. Two of these
 * are equal only if they are the same object.
 */
public final class WorkParts {

    private final List<Job> jobs;
    private final List<PaidStep> access;
    private final List<Purchase> tools;

    WorkParts(List<Job> jobs, List<PaidStep> access, List<Purchase> tools) {
        this.jobs = List.copyOf(jobs);
        this.access = List.copyOf(access);
        this.tools = List.copyOf(tools);
    }

    public List<Job> jobs() {
        return jobs;
    }

    /** Each step once for every way in which others can ease it. */
    public List<PaidStep> access() {
        return access;
    }

    public List<Purchase> tools() {
        return tools;
    }
}
