package worthsaving.deal;

import java.util.List;
import java.util.Optional;
import worthsaving.deal.Allotment.Run;

/**
 * Factors that bring the drawn means of money, hours and value to the exact ones over the patterns that
 * are finished (ratio estimation with known means, Cochran 1977, Sampling Techniques, chapter 6). Each is
 * within a few per mille of 1; they take the sampling error of the means away and leave the spread.
 */
record Levelling(double cash, double hours, double backCash, double backHours, double value) {

    static final Levelling NONE = new Levelling(1, 1, 1, 1, 1);

    /**
     * Levels parts together with the car's price factor, and hours with its speed.
     *
     * @param finished by run
     */
    static Levelling of(PreparedDeal prepared, DealTerms terms, TermDraws t, boolean[] finished) {
        double[] exact = new double[5];
        double[] drawn = new double[5];
        double[] weights = prepared.weights();
        RepairDraws repair = prepared.repair();
        double[] parts = t.get(Term.PARTS_PRICE);
        double[] speed = t.get(Term.SPEED);
        double meanParts = terms.mean(Term.PARTS_PRICE) / 100;
        double meanSpeed = terms.mean(Term.SPEED) / 100;
        List<Run> runs = prepared.runs();
        for (int r = 0; r < runs.size(); r++) {
            Optional<PlanDraw> plan = prepared.plans().get(r);
            if (!finished[r] || plan.isEmpty()) {
                continue;
            }
            double weight = 0;
            for (int i = runs.get(r).from(); i < runs.get(r).to(); i++) {
                double w = weights[i];
                weight += w;
                drawn[0] += w * parts[i] * repair.cash()[i];
                drawn[1] += w * speed[i] * repair.hours()[i];
                drawn[2] += w * parts[i] * repair.backCash()[i];
                drawn[3] += w * speed[i] * repair.backHours()[i];
                drawn[4] += w * prepared.value()[i];
            }
            exact[0] += weight * meanParts * plan.get().meanCash();
            exact[1] += weight * meanSpeed * plan.get().meanHours();
            exact[2] += weight * meanParts * plan.get().meanBackCash();
            exact[3] += weight * meanSpeed * plan.get().meanBackHours();
            exact[4] += weight * prepared.meanValue();
        }
        return new Levelling(ratio(exact[0], drawn[0]), ratio(exact[1], drawn[1]), ratio(exact[2], drawn[2]),
                ratio(exact[3], drawn[3]), ratio(exact[4], drawn[4]));
    }

    /** Nothing drawn, or nothing to come, leaves nothing to level. */
    private static double ratio(double exact, double drawn) {
        return exact > 0 && drawn > 0 ? exact / drawn : 1;
    }
}
