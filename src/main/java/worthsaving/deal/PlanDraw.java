package worthsaving.deal;

import java.util.BitSet;

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
    record Job(DrawnRange parts, DrawnRange consumables, DrawnRange hours, BitSet reach, char[] luck, double fails,
            double comesBack) {}

    /**
     * An access step as some plans pay it.
     *
     * @param number the same however it is eased
     */
    record Step(int number, DrawnRange hours, DrawnRange again) {}

    private final DrawnRange[] tools;
    private final Step[] access;
    private final Job[] jobs;
    private double meanCash;
    private double meanHours;
    private double meanBackCash;
    private double meanBackHours;

    PlanDraw(DrawnRange[] tools, Step[] access, Job[] jobs) {
        this.tools = tools;
        this.access = access;
        this.jobs = jobs;
        for (Step step : access) {
            meanHours += step.hours().mean();
        }
        for (Job job : jobs) {
            double cash = job.parts().mean() + job.consumables().mean();
            double again = job.hours().mean() + meanAgain(job);
            meanCash += (1 + job.fails()) * cash;
            meanHours += job.hours().mean() + job.fails() * again;
            meanBackCash += job.comesBack() * cash;
            meanBackHours += job.comesBack() * again;
        }
        for (DrawnRange tool : tools) {
            meanCash += tool.mean();
        }
    }

    private double meanAgain(Job job) {
        double sum = 0;
        for (Step step : access) {
            sum += job.reach().get(step.number()) ? step.again().mean() : 0;
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
            draw(into, i);
        }
    }

    private void draw(RepairDraws into, int i) {
        double allCash = 0;
        double allHours = 0;
        for (DrawnRange tool : tools) {
            allCash += tool.at(i);
        }
        for (Step step : access) {
            allHours += step.hours().at(i);
        }
        for (Job job : jobs) {
            double cash = job.parts().at(i) + job.consumables().at(i);
            double hours = job.hours().at(i);
            double luck = (job.luck()[i] + 0.5) / job.luck().length;
            allCash += cash;
            allHours += hours;
            if (luck < job.fails()) {
                allCash += cash;
                allHours += hours + again(job, i);
            } else if (luck < job.fails() + job.comesBack()) {
                into.backCash()[i] += cash;
                into.backHours()[i] += hours + again(job, i);
            }
        }
        into.cash()[i] = allCash;
        into.hours()[i] = allHours;
    }

    private double again(Job job, int point) {
        double sum = 0;
        for (Step step : access) {
            sum += job.reach().get(step.number()) ? step.again().at(point) : 0;
        }
        return sum;
    }
}
