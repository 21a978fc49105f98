package worthsaving.repair;

import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;
import worthsaving.repair.RepairPlan.Job;
import worthsaving.repair.RepairPlan.PaidStep;
import worthsaving.repair.RepairPlan.Purchase;

/**
 * What a {@link RepairPlan} does and costs, bare: for the thousands of sets of failed items that one car
 * may have. Figures are means in the workshop's currency.
 */
public final class RepairWork {

    private final WorkParts parts;
    private final int[] jobs;
    private final int[] access;
    private final int[] tools;
    private final double separateHours;
    private final double hours;
    private final double cost;
    private final double reserve;

    /** Numbers are positions in the parts; the arrays are not copied. */
    RepairWork(WorkParts parts, int[] jobs, int[] access, int[] tools, double separateHours, double hours, double cost,
            double reserve) {
        this.parts = parts;
        this.jobs = jobs;
        this.access = access;
        this.tools = tools;
        this.separateHours = separateHours;
        this.hours = hours;
        this.cost = cost;
        this.reserve = reserve;
    }

    /** All of the parts. */
    RepairWork(WorkParts parts, double separateHours, double hours, double cost, double reserve) {
        this(parts, upTo(parts.jobs()), upTo(parts.access()), upTo(parts.tools()), separateHours, hours, cost, reserve);
    }

    private static int[] upTo(List<?> all) {
        return IntStream.range(0, all.size()).toArray();
    }

    /** The same object for all works of one planner. */
    public WorkParts parts() {
        return parts;
    }

    public List<Job> jobs() {
        return Arrays.stream(jobs).mapToObj(parts.jobs()::get).toList();
    }

    public List<PaidStep> access() {
        return Arrays.stream(access).mapToObj(parts.access()::get).toList();
    }

    public List<Purchase> toolsToBuy() {
        return tools.length == 0 ? List.of() : Arrays.stream(tools).mapToObj(parts.tools()::get).toList();
    }

    public int jobCount() {
        return jobs.length;
    }

    /** Position of the n-th job among those of the parts; ascending. */
    public int job(int n) {
        return jobs[n];
    }

    public int accessCount() {
        return access.length;
    }

    /** Position of the n-th step among those of the parts; ascending. */
    public int access(int n) {
        return access[n];
    }

    public int toolCount() {
        return tools.length;
    }

    /** Position of the n-th tool to buy among those of the parts; ascending. */
    public int tool(int n) {
        return tools[n];
    }

    /** If every job paid its own access. */
    public double separateHours() {
        return separateHours;
    }

    /** Access and job hours together. */
    public double hours() {
        return hours;
    }

    /** Parts, consumables, tools and hours. */
    public double cost() {
        return cost;
    }

    /** Chance of doing each job again times its cost alone. */
    public double reserve() {
        return reserve;
    }

    /** The figure that is made as small as it can be. */
    public double expectedCost() {
        return cost + reserve;
    }
}
