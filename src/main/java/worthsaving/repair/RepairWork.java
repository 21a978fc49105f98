package worthsaving.repair;

import java.util.List;
import worthsaving.repair.RepairPlan.Job;
import worthsaving.repair.RepairPlan.PaidStep;
import worthsaving.repair.RepairPlan.Purchase;

/**
 * What a {@link RepairPlan} does and costs, bare: for the thousands of sets of failed items that one car
 * may have. Figures are means in the workshop's currency.
 *
 * @param separateHours if every job paid its own access
 * @param hours access and job hours together
 * @param cost parts, consumables, tools and hours
 * @param reserve chance of doing each job again times its cost alone
 */
public record RepairWork(
        List<Job> jobs, List<PaidStep> access, List<Purchase> toolsToBuy, double separateHours, double hours,
        double cost, double reserve) {

    /** The figure that is made as small as it can be. */
    public double expectedCost() {
        return cost + reserve;
    }
}
