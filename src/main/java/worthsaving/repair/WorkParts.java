package worthsaving.repair;

import java.util.List;
import worthsaving.repair.RepairPlan.Job;
import worthsaving.repair.RepairPlan.PaidStep;
import worthsaving.repair.RepairPlan.Purchase;

/**
 * What the works of one planner are put together from; a work names them by their positions here.
 *
 * @param access each step once for every way in which others can ease it
 */
public record WorkParts(List<Job> jobs, List<PaidStep> access, List<Purchase> tools) {

    public WorkParts {
        jobs = List.copyOf(jobs);
        access = List.copyOf(access);
        tools = List.copyOf(tools);
    }
}
