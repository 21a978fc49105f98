package worthsaving.deal;

import worthsaving.repair.RepairWork;

/**
 * A repair plan made ready for drawing: money and hours of each job at each point.
 *
 * <p>A job that does not work (chance 1 - success) is done again before the sale; one that comes back
 * (chance success x comeback) is done again after it. Doing again means the job's parts, consumables and
 * hours, and the access steps it needs, as the plan pays them; a step that is open now as if it were not.
 */
final class PlanDraw {

    private final RepairWork work;
    private final DrawnParts parts;
    private double meanCash;
    private double meanHours;
    private double meanBackCash;
    private double meanBackHours;

    PlanDraw(RepairWork work, DrawnParts parts) {
        this.work = work;
        this.parts = parts;
        for (int k = 0; k < work.accessCount(); k++) {
            meanHours += parts.access(work.access(k)).hours().mean();
        }
        for (int k = 0; k < work.jobCount(); k++) {
            DrawnParts.Job job = parts.job(work.job(k));
            double cash = job.parts().mean() + job.consumables().mean();
            double again = job.hours().mean() + meanAgain(job);
            meanCash += (1 + job.fails()) * cash;
            meanHours += job.hours().mean() + job.fails() * again;
            meanBackCash += job.comesBack() * cash;
            meanBackHours += job.comesBack() * again;
        }
        for (int k = 0; k < work.toolCount(); k++) {
            meanCash += parts.tool(work.tool(k)).mean();
        }
    }

    private double meanAgain(DrawnParts.Job job) {
        double sum = 0;
        for (int k = 0; k < work.accessCount(); k++) {
            sum += job.reach()[work.access(k)] ? parts.access(work.access(k)).again().mean() : 0;
        }
        return sum;
    }

    /** Hours at a point of opening anew what a job needs. */
    double again(DrawnParts.Job job, int point) {
        double sum = 0;
        for (int k = 0; k < work.accessCount(); k++) {
            sum += job.reach()[work.access(k)] ? parts.access(work.access(k)).again().at(point) : 0;
        }
        return sum;
    }

    RepairWork work() {
        return work;
    }

    DrawnParts parts() {
        return parts;
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
}
