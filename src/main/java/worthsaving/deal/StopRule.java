package worthsaving.deal;

/**
 * Whether to finish once it is known what has failed, decided on means: the owner then knows the
 * pattern, but not yet the prices and hours to come. Money already spent does not count.
 */
final class StopRule {

    private final double withoutRepair;
    private final double perCash;
    private final double perHour;
    private final double perBackCash;
    private final double perBackHour;
    private final double best;

    /**
     * @param nothing flow of selling with nothing to mend
     * @param best expected money of the best way out of a car already opened up, price apart
     */
    StopRule(DealCase deal, TermDraws t, Flow nothing, double[] weights, double best) {
        double rate = deal.labour().hourly().amount();
        double speed = mean(t.get(Term.SPEED), weights);
        double capitalPerDay = mean(t.get(Term.CAPITAL_RATE), weights) / 365;
        double capital = capitalPerDay * mean(nothing.days(), weights);
        double[] inverse = t.get(Term.WORK_PER_DAY).clone();
        for (int i = 0; i < inverse.length; i++) {
            inverse[i] = 1 / inverse[i];
        }
        double daysPerHour = mean(inverse, weights);
        double perDay = mean(t.get(Term.HOLDING_PER_DAY_OWN), weights)
                + capitalPerDay * mean(nothing.cashOut(), weights);
        double borne = mean(t.get(Term.REPEAT_BORNE), weights);
        this.withoutRepair = mean(nothing.before(), weights);
        this.perCash = 1 + capital;
        this.perHour = speed * (rate * (deal.labour().own() ? 1 : 1 + capital) + perDay * daysPerHour);
        this.perBackCash = borne;
        this.perBackHour = borne * speed * rate;
        this.best = best;
    }

    /** Expected money from finishing, price apart. */
    double finishing(PlanDraw plan) {
        return withoutRepair - perCash * plan.meanCash() - perHour * plan.meanHours()
                - perBackCash * plan.meanBackCash() - perBackHour * plan.meanBackHours();
    }

    boolean stops(PlanDraw plan) {
        return finishing(plan) < best;
    }

    static double mean(double[] values, double[] weights) {
        double sum = 0;
        for (int i = 0; i < values.length; i++) {
            sum += values[i] * weights[i];
        }
        return sum;
    }
}
