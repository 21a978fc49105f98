package worthsaving.repair;

import java.util.List;
import java.util.Set;
import worthsaving.catalog.PartSource;
import worthsaving.quantity.Hours;
import worthsaving.quantity.HoursRange;
import worthsaving.quantity.Money;
import worthsaving.quantity.MoneyRange;
import worthsaving.quantity.Probability;

/**
 * The cheapest way found to mend a set of failed items.
 *
 * @param failed ids of the items to mend
 * @param jobs what is done; together they close every failed item
 * @param access steps paid once for all jobs, requirements included
 * @param toolsToBuy special tools the workshop does not own
 * @param separateHours mean hours if every job paid its own access
 * @param meanCost parts, consumables, tools and hours at the workshop's rate, at the mean of each range
 * @param meanHours access and job hours together, at the workshop's speed
 */
public record RepairPlan(
        Set<String> failed,
        List<Job> jobs,
        List<PaidStep> access,
        List<Purchase> toolsToBuy,
        Hours separateHours,
        Money meanCost,
        Hours meanHours) {

    /**
     * One job of the plan.
     *
     * @param id id of the remedy or of the item it mends
     * @param hours hours of the job itself, at book speed
     */
    public record Job(
            String id,
            String name,
            Set<String> closes,
            PartSource partSource,
            MoneyRange parts,
            MoneyRange consumables,
            HoursRange hours,
            Probability success,
            Probability comeback,
            boolean wholeUnit) {}

    /** An access step with the hours charged for it, at book speed, easing already applied. */
    public record PaidStep(String id, String name, HoursRange hours) {}

    /** A tool that must be bought. */
    public record Purchase(String tool, String name, MoneyRange price) {}

    public RepairPlan {
        failed = Set.copyOf(failed);
        jobs = List.copyOf(jobs);
        access = List.copyOf(access);
        toolsToBuy = List.copyOf(toolsToBuy);
    }
}
