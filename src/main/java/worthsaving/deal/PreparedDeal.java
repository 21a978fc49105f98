package worthsaving.deal;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import worthsaving.deal.Allotment.Run;
import worthsaving.diagnosis.FailurePatterns;
import worthsaving.quantity.Money;
import worthsaving.repair.RepairPlan;
import worthsaving.repair.RepairWork;

/**
 * A car whose repairs and sale values have been drawn, ready to be judged at any price and terms. Moving
 * a slider costs only the judging. Safe to share between threads; the same inputs give the same numbers
 * on any of them.
 */
public final class PreparedDeal {

    private static final String VALUE = "sale value";

    private final DealCase deal;
    private final Allotment allotment;
    private final PatternNumbers patterns;
    private final List<Optional<PlanDraw>> plans;
    private final List<List<RepairPlan.Purchase>> tools = new ArrayList<>();
    private final RepairDraws repair;
    private final double[] value;
    private final double meanValue;
    private final PertTable pert;
    private final int levels;
    /** Serves the next price under the same terms and rule; it is never changed once made. */
    private volatile Judgement last;
    /** Serves other terms, most of which are the same; never changed either. */
    private volatile TermDraws lastDrawn;

    PreparedDeal(DealCase deal) {
        this.deal = deal;
        FailurePatterns failures = deal.patterns();
        int atoms = failures.drawn() ? failures.patterns().size() : deal.method().points();
        this.levels = failures.drawn() ? Math.max(64, powerOfTwo(atoms)) : atoms;
        this.allotment = Allotment.of(failures, atoms);
        this.patterns = PatternNumbers.of(allotment.runs());
        this.pert = PertTable.of(levels);
        QuasiPoints points = points();
        double[] byLevel = ValueLevels.of(deal.value().saleValue(), levels);
        this.meanValue = Arrays.stream(byLevel).average().orElseThrow();
        this.value = new double[atoms];
        char[] column = points.column(VALUE);
        Arrays.setAll(value, i -> byLevel[column[i]]);
        PlanDraws draws = new PlanDraws(deal.labour(), points, pert);
        this.plans = plans(draws);
        this.repair = draws.draw(runs(), plans, atoms);
    }

    private PreparedDeal(PreparedDeal other, DealCase deal, Allotment allotment, double factor) {
        this.deal = deal;
        this.levels = other.levels;
        this.allotment = allotment;
        this.patterns = other.patterns;
        this.pert = other.pert;
        this.lastDrawn = other.lastDrawn;
        this.repair = other.repair;
        this.plans = other.plans;
        this.tools.addAll(other.tools);
        this.meanValue = other.meanValue * factor;
        this.value = factor == 1 ? other.value : Arrays.stream(other.value).map(v -> v * factor).toArray();
    }

    /** The same car worth more or less by a factor, all else as drawn. */
    public PreparedDeal withValueTimes(double factor) {
        if (!(factor > 0) || Double.isInfinite(factor)) {
            throw new IllegalArgumentException("a value is scaled by more than zero, not " + factor);
        }
        return new PreparedDeal(this, deal, allotment, factor);
    }

    /** The same car with the repair's hours at another worth; the jobs stay as they were chosen and drawn. */
    public PreparedDeal withHourly(Money hourly) {
        Labour labour = new Labour(hourly, deal.labour().own(), deal.labour().factor());
        return new PreparedDeal(this, deal.withLabour(labour), allotment, 1);
    }

    /**
     * The same car with some items failed at other chances, all else as drawn: each pattern keeps its points
     * and gets another weight. What the other items do given these stays as it is. The rarer an item was, the
     * fewer points stand for its failure.
     *
     * @param chances by item id, each from 0 to 1; what cannot have failed, or must have, stays so
     */
    public PreparedDeal withChances(Map<String, Double> chances) {
        return chances.isEmpty() ? this
                : new PreparedDeal(this, deal, allotment.withChances(deal.patterns().items(), chances), 1);
    }

    /** The same car drawn at fewer points: quicker and rougher. */
    public PreparedDeal coarse(int points) {
        return new PreparedDeal(deal.withMethod(deal.method().withPoints(points))
                .withPatterns(deal.patterns().first(points)));
    }

    /** Probability that an item has failed. */
    public double chance(String item) {
        return allotment.chance(deal.patterns().items().indexOf(item));
    }

    /**
     * Judges the car.
     *
     * @param ask asking price; without one the outcomes are shown at the most to pay
     */
    public Assessment assess(DealTerms terms, BuyerRule rule, Optional<Money> ask) {
        Judgement judgement = last;
        if (judgement == null || !judgement.isBy(terms, rule)) {
            judgement = new Judgement(this, terms, rule);
            last = judgement;
        }
        return judgement.at(ask);
    }

    /**
     * Cost of mending everything, own hours at their worth, jobs done twice before the car runs included;
     * over the patterns that can be mended, empty when none can.
     */
    public Optional<Outcome> repairCost(DealTerms terms) {
        TermDraws t = terms(terms);
        double rate = deal.labour().hourly().amount();
        double[] costs = new double[value.length];
        double[] share = new double[value.length];
        boolean any = false;
        for (int r = 0; r < runs().size(); r++) {
            for (int i = runs().get(r).from(); i < runs().get(r).to() && plans.get(r).isPresent(); i++) {
                costs[i] = repair.cash()[i] * t.get(Term.PARTS_PRICE)[i]
                        + repair.hours()[i] * t.get(Term.SPEED)[i] * rate;
                share[i] = weights()[i];
                any = true;
            }
        }
        return any ? Optional.of(Outcome.of(costs, share)) : Optional.empty();
    }

    /** Expected profit of one way out at a price, without the rest of a judgement. */
    public double expectedProfit(DealTerms terms, WayOut way, Money price) {
        return new FlowSet(this, terms).limit(way).expectedProfit(way == WayOut.WALK_AWAY ? 0 : price.amount());
    }

    public DealCase deal() {
        return deal;
    }

    double[] weights() {
        return allotment.weights();
    }

    List<Run> runs() {
        return allotment.runs();
    }

    PatternNumbers patterns() {
        return patterns;
    }

    /** The plan of each run; empty where nothing allowed mends its pattern. */
    List<Optional<PlanDraw>> plans() {
        return plans;
    }

    /** What the plan of each run makes one buy. */
    List<List<RepairPlan.Purchase>> tools() {
        return tools;
    }

    RepairDraws repair() {
        return repair;
    }

    double[] value() {
        return value;
    }

    /** Mean over all levels: what {@link #value} averages when the points are many. */
    double meanValue() {
        return meanValue;
    }

    TermDraws terms(DealTerms terms) {
        TermDraws drawn = new TermDraws(terms, points(), pert, value.length, lastDrawn);
        lastDrawn = drawn;
        return drawn;
    }

    private QuasiPoints points() {
        return new QuasiPoints(levels, deal.method().seed(), VALUE, TermDraws.name(Term.SPEED),
                TermDraws.name(Term.ASIS_SHARE), TermDraws.name(Term.DAYS_TO_SELL), TermDraws.name(Term.DAYS_WAITING),
                TermDraws.name(Term.PARTOUT_GROSS), TermDraws.name(Term.PARTS_PRICE));
    }

    private List<Optional<PlanDraw>> plans(PlanDraws draws) {
        Function<BitSet, Optional<RepairWork>> work = deal.repairs().over(deal.patterns().items());
        List<Optional<PlanDraw>> byPattern = new ArrayList<>(patterns.patterns().size());
        List<List<RepairPlan.Purchase>> toolsOf = new ArrayList<>(patterns.patterns().size());
        for (BitSet pattern : patterns.patterns()) {
            Optional<RepairWork> found = work.apply(pattern);
            byPattern.add(found.map(draws::of));
            toolsOf.add(found.map(RepairWork::toolsToBuy).orElse(List.of()));
        }
        List<Optional<PlanDraw>> byRun = new ArrayList<>(runs().size());
        for (int r = 0; r < runs().size(); r++) {
            byRun.add(byPattern.get(patterns.ofRun()[r]));
            tools.add(toolsOf.get(patterns.ofRun()[r]));
        }
        return List.copyOf(byRun);
    }

    private static int powerOfTwo(int atLeast) {
        int highest = Integer.highestOneBit(atLeast);
        return highest == atLeast ? highest : highest << 1;
    }
}
