package worthsaving.deal;

/**
 * Expected money of finishing each failure pattern, without drawing: what an owner can know who has
 * seen what has failed, but not yet the prices and hours to come. The quantities of a plan and the
 * money lines are independent, so the mean of a product is the product of the means; only the square of
 * the same hours, in the capital of a shop's bill, and its capped supplies are taken at their mean.
 */
final class PatternMeans {

    private final double withoutRepair;
    private final double fixed;
    private final double days;
    private final double daysPerHour;
    private final double holding;
    private final double capitalPerDay;
    private final double priceFactor;
    private final double speed;
    private final double rate;
    private final boolean own;
    private final double borne;
    private final double parts;
    private final double perCar;
    private final double supplies;
    private final double suppliesCap;

    /** @param nothing flow of selling with nothing to mend */
    PatternMeans(DealCase deal, DealTerms terms, TermDraws t, Flow nothing, double[] weights) {
        double[] inverse = t.get(Term.WORK_PER_DAY).clone();
        for (int i = 0; i < inverse.length; i++) {
            inverse[i] = 1 / inverse[i];
        }
        this.withoutRepair = mean(nothing.before(), weights);
        this.fixed = mean(nothing.fixed(), weights);
        this.days = mean(nothing.days(), weights);
        this.daysPerHour = mean(inverse, weights);
        this.holding = terms.mean(Term.HOLDING_PER_DAY_OWN);
        this.capitalPerDay = terms.mean(Term.CAPITAL_RATE) / 100 / 365;
        this.priceFactor = mean(nothing.priceFactor(), weights);
        this.speed = terms.mean(Term.SPEED) / 100;
        this.rate = deal.labour().hourly().amount();
        this.own = deal.labour().own();
        this.parts = terms.mean(Term.PARTS_PRICE) / 100;
        this.perCar = terms.mean(Term.PARTS_SHIPPING) + terms.mean(Term.DISPOSAL);
        this.supplies = terms.mean(Term.SHOP_SUPPLIES) / 100;
        this.suppliesCap = terms.mean(Term.SHOP_SUPPLIES_CAP);
        this.borne = terms.mean(Term.REPEAT_BORNE) / 100;
    }

    /** Expected money from finishing, price apart. */
    double before(PlanDraw plan) {
        double hours = plan.meanHours() * speed;
        double labour = hours * rate;
        double cash = plan.meanCash() * parts + (own ? 0 : labour + Math.min(supplies * labour, suppliesCap));
        double moreDays = hours * daysPerHour;
        double capital = capitalPerDay * (moreDays * (fixed + perCar) + (days + moreDays) * cash);
        double back = borne * (plan.meanBackCash() * parts + plan.meanBackHours() * speed * rate);
        return withoutRepair - cash - (own ? hours * rate : 0) - holding * moreDays - capital - back;
    }

    /** Expected cost of one unit of price. */
    double unit(PlanDraw plan) {
        return priceFactor * (1 + capitalPerDay * (days + plan.meanHours() * speed * daysPerHour));
    }

    double ownLabour(PlanDraw plan) {
        return own ? plan.meanHours() * speed * rate : 0;
    }

    static double mean(double[] values, double[] weights) {
        double sum = 0;
        for (int i = 0; i < values.length; i++) {
            sum += values[i] * weights[i];
        }
        return sum;
    }
}
