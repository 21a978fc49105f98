package worthsaving.deal;

/**
 * A repair plan made ready for drawing: money and hours of each job at each point.
 *
 * <p>A job that does not work (chance 1 - success) is done again before the sale; one that comes back
 * (chance success x comeback) is done again after it. Doing again means the job's parts, consumables and
 * hours, and the access steps it needs, as the plan pays them; a step that is open now as if it were not.
 */
final class PlanDraw {

    /**
     * A job in any plan.
     *
     * @param reach numbers of the access steps it needs
     * @param luck levels that decide whether it has to be done again
     */
    record Job(DrawnRange parts, DrawnRange consumables, DrawnRange hours, int[] reach, char[] luck, double fails,
            double comesBack) {}

    private final DrawnRange[] tools;
    private final DrawnRange[] access;
    private final Job[] jobs;
    /** By job: the steps it needs, as this plan pays them. */
    private final DrawnRange[][] reach;
    private double meanCash;
    private double meanHours;
    private double meanBackCash;
    private double meanBackHours;

    PlanDraw(DrawnRange[] tools, DrawnRange[] access, Job[] jobs, DrawnRange[][] reach) {
        this.tools = tools;
        this.access = access;
        this.jobs = jobs;
        this.reach = reach;
        meanHours = mean(access);
        for (int j = 0; j < jobs.length; j++) {
            Job job = jobs[j];
            double cash = job.parts().mean() + job.consumables().mean();
            double again = job.hours().mean() + mean(reach[j]);
            meanCash += (1 + job.fails()) * cash;
            meanHours += job.hours().mean() + job.fails() * again;
            meanBackCash += job.comesBack() * cash;
            meanBackHours += job.comesBack() * again;
        }
        meanCash += mean(tools);
    }

    private static double mean(DrawnRange[] amounts) {
        double sum = 0;
        for (DrawnRange amount : amounts) {
            sum += amount.mean();
        }
        return sum;
    }

    double meanCash() {
        return meanCash;
    }

    double meanHours() {
        return meanHours;
    }

    double meanBackCash() {
        return meanBackCash;
    }

    double meanBackHours() {
        return meanBackHours;
    }

    void draw(RepairDraws into, int from, int to) {
        for (int i = from; i < to; i++) {
            into.cash()[i] = at(tools, i);
            into.hours()[i] = at(access, i);
            for (int j = 0; j < jobs.length; j++) {
                draw(j, into, i);
            }
        }
    }

    private void draw(int j, RepairDraws into, int i) {
        Job job = jobs[j];
        double cash = job.parts().at(i) + job.consumables().at(i);
        double hours = job.hours().at(i);
        double luck = (job.luck()[i] + 0.5) / job.luck().length;
        into.cash()[i] += cash;
        into.hours()[i] += hours;
        if (luck < job.fails()) {
            into.cash()[i] += cash;
            into.hours()[i] += hours + at(reach[j], i);
        } else if (luck < job.fails() + job.comesBack()) {
            into.backCash()[i] += cash;
            into.backHours()[i] += hours + at(reach[j], i);
        }
    }

    private static double at(DrawnRange[] amounts, int point) {
        double sum = 0;
        for (DrawnRange amount : amounts) {
            sum += amount.at(point);
        }
        return sum;
    }
}
