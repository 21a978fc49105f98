package worthsaving.deal;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import worthsaving.deal.Allotment.Run;

/** The flows of all ways out of one prepared car under one set of terms. */
final class FlowSet {

    private final PreparedDeal prepared;
    private final double[] weights;
    private final double[] incomeTax;
    private final Map<WayOut, Flow> flows = new EnumMap<>(WayOut.class);
    private final PatternMeans means;
    private final Flow exit;
    private final boolean[] finished;
    private double chanceOfStopping;
    private double chanceUnmendable;

    FlowSet(PreparedDeal prepared, DealTerms terms) {
        this.prepared = prepared;
        this.weights = prepared.weights();
        TermDraws t = prepared.terms(terms);
        this.incomeTax = t.get(Term.INCOME_TAX);
        Flows make = new Flows(prepared.deal(), t, prepared.repair(), prepared.value());
        this.means = new PatternMeans(prepared.deal(), terms, t, make.finishNothing(), weights);
        this.exit = Stream.of(make.asItStands(true), make.partOut(true), make.scrap(true))
                .max(Comparator.comparingDouble(f -> PatternMeans.mean(f.before(), weights)))
                .orElseThrow();
        this.finished = finished();
        flows.put(WayOut.REPAIR_AND_SELL, repairAndSell(make.finish(Levelling.of(prepared, terms, t, finished))));
        flows.put(WayOut.SELL_AS_IT_STANDS, make.asItStands(false));
        flows.put(WayOut.PART_OUT, make.partOut(false));
        flows.put(WayOut.SCRAP, make.scrap(false));
        flows.put(WayOut.WALK_AWAY, Flow.ofSize(weights.length));
    }

    Flow of(WayOut way) {
        return flows.get(way);
    }

    double[] incomeTax() {
        return incomeTax;
    }

    PriceLimit limit(WayOut way) {
        return new PriceLimit(flows.get(way), weights, incomeTax);
    }

    double chanceOfStopping() {
        return chanceOfStopping;
    }

    double chanceUnmendable() {
        return chanceUnmendable;
    }

    private boolean[] finished() {
        double best = PatternMeans.mean(exit.before(), weights);
        boolean mayStop = prepared.deal().method().mayStop();
        boolean[] out = new boolean[prepared.runs().size()];
        for (int r = 0; r < out.length; r++) {
            Optional<PlanDraw> plan = prepared.plans().get(r);
            out[r] = plan.isPresent() && !(mayStop && means.before(plan.get()) < best);
        }
        return out;
    }

    private Flow repairAndSell(Flow finish) {
        for (int r = 0; r < finished.length; r++) {
            Run run = prepared.runs().get(r);
            for (int i = run.from(); i < run.to() && !finished[r]; i++) {
                finish.copy(i, exit);
                chanceOfStopping += weights[i];
                chanceUnmendable += prepared.plans().get(r).isEmpty() ? weights[i] : 0;
            }
        }
        return finish;
    }

    /** Expected profits without drawing; income tax is taken at each pattern's mean. */
    List<PatternProfit> byPattern(double price) {
        double tax = mean(incomeTax);
        double stop = taxed(mean(exit.before()) - mean(exit.unit()) * price, mean(exit.ownLabour()), tax);
        double[] others = new double[WayOut.values().length];
        for (WayOut way : List.of(WayOut.SELL_AS_IT_STANDS, WayOut.PART_OUT, WayOut.SCRAP)) {
            others[way.ordinal()] = limit(way).expectedProfit(price);
        }
        PatternNumbers patterns = prepared.patterns();
        double[] weight = new double[patterns.patterns().size()];
        double[] repaired = new double[weight.length];
        for (int r = finished.length - 1; r >= 0; r--) {
            repaired[patterns.ofRun()[r]] =
                    finished[r] ? finishing(prepared.plans().get(r).orElseThrow(), price, tax) : stop;
        }
        for (int r = 0; r < finished.length; r++) {
            Run run = prepared.runs().get(r);
            for (int i = run.from(); i < run.to(); i++) {
                weight[patterns.ofRun()[r]] += weights[i];
            }
        }
        List<PatternProfit> all = new ArrayList<>(weight.length);
        for (int p = 0; p < weight.length; p++) {
            double[] profit = others.clone();
            profit[WayOut.REPAIR_AND_SELL.ordinal()] = repaired[p];
            all.add(new PatternProfit(patterns.patterns().get(p), weight[p], profit));
        }
        return all;
    }

    /** The tools that cars worth finishing make one buy. */
    List<ToolNeed> toolNeeds(DealTerms terms) {
        ToolNeeds needs = new ToolNeeds(terms.mean(Term.PARTS_PRICE) / 100);
        for (int r = 0; r < finished.length; r++) {
            Run run = prepared.runs().get(r);
            for (int i = run.from(); i < run.to() && finished[r]; i++) {
                needs.add(prepared.tools().get(r), weights[i]);
            }
        }
        return needs.all();
    }

    private double finishing(PlanDraw plan, double price, double tax) {
        return taxed(means.before(plan) - means.unit(plan) * price, means.ownLabour(plan), tax);
    }

    private static double taxed(double profit, double ownLabour, double tax) {
        return profit - tax * Math.max(0, profit + ownLabour);
    }

    private double mean(double[] values) {
        return PatternMeans.mean(values, weights);
    }
}
