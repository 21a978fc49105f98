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
 * @param separateHours mean hours if every job paid its own access, at the workshop's speed
 * @param meanCost parts, consumables, tools and hours at the workshop's rate, at the mean of each range
 * @param meanHours access and job hours together, at the workshop's speed
 * @param comebackReserve chance of doing each job again times its cost alone; not part of
 *     {@code meanCost}, but the plan is chosen by the sum of the two
 */
public record RepairPlan(
        Set<String> failed,
        List<Job> jobs,
        List<PaidStep> access,
        List<Purchase> toolsToBuy,
        Hours separateHours,
        Money meanCost,
        Hours meanHours,
        Money comebackReserve) {

    /**
     * One job of the plan.
     *
     * @param id id of the remedy or of the item it mends
     * @param hours hours of the job itself, at book speed
     * @param access ids of the access steps it needs, requirements included: paid again when it is done again
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
            boolean wholeUnit,
            Set<String> access) {

        public Job {
            closes = Set.copyOf(closes);
            access = Set.copyOf(access);
        }

        /** A job that needs no access. */
        public Job(
                String id, String name, Set<String> closes, PartSource partSource, MoneyRange parts,
                MoneyRange consumables, HoursRange hours, Probability success, Probability comeback,
                boolean wholeUnit) {
            this(id, name, closes, partSource, parts, consumables, hours, success, comeback, wholeUnit, Set.of());
        }

        Job reachedBy(Set<String> steps) {
            return new Job(
                    id, name, closes, partSource, parts, consumables, hours, success, comeback, wholeUnit, steps);
        }
    }

    /**
     * An access step with the hours charged for it, at book speed, easing already applied.
     *
     * @param again hours when a job behind it has to be done again: more than {@code hours} where the step is
     *     open now
     */
    public record PaidStep(String id, String name, HoursRange hours, HoursRange again) {

        /** A step that costs as much the second time. */
        public PaidStep(String id, String name, HoursRange hours) {
            this(id, name, hours, hours);
        }
    }

    /** A tool that must be bought. */
    public record Purchase(String tool, String name, MoneyRange price) {}

    public RepairPlan {
        failed = Set.copyOf(failed);
        jobs = List.copyOf(jobs);
        access = List.copyOf(access);
        toolsToBuy = List.copyOf(toolsToBuy);
    }

    /** A plan whose jobs never come back. */
    public RepairPlan(
            Set<String> failed, List<Job> jobs, List<PaidStep> access, List<Purchase> toolsToBuy,
            Hours separateHours, Money meanCost, Hours meanHours) {
        this(failed, jobs, access, toolsToBuy, separateHours, meanCost, meanHours, Money.zero(meanCost.currency()));
    }

    /** The same without the names of what had failed. */
    public RepairWork work() {
        return new RepairWork(new WorkParts(jobs, access, toolsToBuy), separateHours.value(), meanHours.value(),
                meanCost.amount(), comebackReserve.amount());
    }

    /** Hours saved by paying shared access once. */
    public Hours hoursSaved() {
        return Hours.of(Math.max(0, separateHours.value() - meanHours.value()));
    }

    /** The figure that the plan makes as small as it can be: mean cost and comeback reserve. */
    public Money expectedCost() {
        return meanCost.plus(comebackReserve);
    }
}
