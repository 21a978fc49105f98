package worthsaving.deal;

import worthsaving.repair.RepairWork;

/** Which parts take part in the repair at which points. */
final class RepairColumns {

    private final DrawnParts parts;
    private final PlanDraw[] plans;
    private final int words;
    /** By slot of a part, a bit for each point. */
    private final long[] takesPart;

    RepairColumns(DrawnParts parts, int points) {
        this.parts = parts;
        plans = new PlanDraw[points];
        words = (points + Long.SIZE - 1) / Long.SIZE;
        takesPart = new long[parts.slots() * words];
    }

    /** Lets a plan be carried out at the points from (inclusive) to (exclusive). */
    void add(PlanDraw plan, int from, int to) {
        RepairWork work = plan.work();
        for (int i = from; i < to; i++) {
            plans[i] = plan;
            int word = i >> 6;
            long bit = 1L << i;
            for (int k = 0; k < work.jobCount(); k++) {
                takesPart[work.job(k) * words + word] |= bit;
            }
            for (int k = 0; k < work.accessCount(); k++) {
                takesPart[parts.accessSlot(work.access(k)) * words + word] |= bit;
            }
            for (int k = 0; k < work.toolCount(); k++) {
                takesPart[parts.toolSlot(work.tool(k)) * words + word] |= bit;
            }
        }
    }

    void draw(RepairDraws into) {
        int[] points = new int[plans.length];
        for (int t = 0; t < parts.tools(); t++) {
            int count = points(parts.toolSlot(t), points);
            if (count > 0) {
                add(parts.tool(t), points, count, into.cash());
            }
        }
        for (int s = 0; s < parts.accessSteps(); s++) {
            int count = points(parts.accessSlot(s), points);
            if (count > 0) {
                add(parts.access(s).hours(), points, count, into.hours());
            }
        }
        for (int j = 0; j < parts.jobs(); j++) {
            int count = points(j, points);
            if (count > 0) {
                draw(parts.job(j), points, count, into);
            }
        }
    }

    private int points(int slot, int[] points) {
        int count = 0;
        for (int w = 0; w < words; w++) {
            for (long word = takesPart[slot * words + w]; word != 0; word &= word - 1) {
                points[count++] = (w << 6) + Long.numberOfTrailingZeros(word);
            }
        }
        return count;
    }

    private static void add(DrawnRange amount, int[] points, int count, double[] to) {
        for (int k = 0; k < count; k++) {
            to[points[k]] += amount.at(points[k]);
        }
    }

    private void draw(DrawnParts.Job job, int[] points, int count, RepairDraws into) {
        for (int k = 0; k < count; k++) {
            int i = points[k];
            double cash = job.parts().at(i) + job.consumables().at(i);
            double hours = job.hours().at(i);
            double luck = (job.luck()[i] + 0.5) / job.luck().length;
            into.cash()[i] += cash;
            into.hours()[i] += hours;
            if (luck < job.fails()) {
                into.cash()[i] += cash;
                into.hours()[i] += hours + plans[i].again(job, i);
            } else if (luck < job.fails() + job.comesBack()) {
                into.backCash()[i] += cash;
                into.backHours()[i] += hours + plans[i].again(job, i);
            }
        }
    }
}
