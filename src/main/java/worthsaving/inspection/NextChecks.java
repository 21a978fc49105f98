package worthsaving.inspection;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.Currency;
import java.util.List;
import java.util.Map;
import java.util.Set;
import worthsaving.catalog.Catalogue;
import worthsaving.catalog.FindingKind;
import worthsaving.catalog.Tool;
import worthsaving.deal.Assessment;
import worthsaving.deal.BuyerRule;
import worthsaving.deal.PatternProfit;
import worthsaving.deal.WayOut;
import worthsaving.diagnosis.Diagnosis;
import worthsaving.diagnosis.FailureNetwork;
import worthsaving.quantity.Money;
import worthsaving.quantity.Probability;

/**
 * Ranks the checks not yet made by what they are worth for the decision at hand: buy at this price, by the
 * best way out that is open, or leave it.
 *
 * <p>Expected value of sample information = E[max over actions after the finding] - max over actions now,
 * an action being worth its expected profit less the buyer's target, and leaving it zero. Source: Raiffa and
 * Schlaifer (1961), Applied Statistical Decision Theory. No inference is repeated: the failure patterns of
 * the assessment are weighed again by the chance of the finding under each of them.
 */
public final class NextChecks {

    private final Catalogue catalogue;
    private final Map<String, Tool> tools;
    private final CheckSettings settings;

    public NextChecks(Catalogue catalogue, CheckSettings settings) {
        this.catalogue = catalogue;
        this.tools = catalogue.toolsById();
        this.settings = settings;
    }

    /**
     * @param assessment of the diagnosis's own failure patterns
     * @return best net value first, those that are not worth their cost included
     */
    public List<CheckValue> rank(Diagnosis diagnosis, Assessment assessment) {
        Set<String> known = diagnosis.evidence().findings().keySet();
        List<CheckValue> values = new ArrayList<>();
        for (FindingKind finding : catalogue.findings()) {
            if (!known.contains(finding.id()) && possible(finding)) {
                values.add(value(finding, diagnosis.network(), assessment));
            }
        }
        values.sort(Comparator.comparing(CheckValue::net).reversed().thenComparing(v -> v.finding().id()));
        return values;
    }

    private boolean possible(FindingKind finding) {
        return settings.stages().contains(finding.stage())
                && settings.leaves().contains(finding.sellerAllows())
                && (settings.damaging() || !finding.canDoDamage());
    }

    private CheckValue value(FindingKind finding, FailureNetwork network, Assessment assessment) {
        Action present = new Action(assessment.rule());
        Action absent = new Action(assessment.rule());
        Action now = new Action(assessment.rule());
        for (PatternProfit p : assessment.patternProfits()) {
            double chance = network.findingChance(finding.id(), p.pattern());
            present.add(p, chance);
            absent.add(p, 1 - chance);
            now.add(p, 1);
        }
        double gross = Math.max(0, present.gain() + absent.gain() - now.gain());
        Currency currency = assessment.price().currency();
        return new CheckValue(
                finding,
                Probability.of(Math.min(1, present.weight / now.weight)),
                new Money(gross, currency),
                cost(finding),
                new Money(present.expectedProfit(), currency),
                new Money(absent.expectedProfit(), currency),
                present.buys() != absent.buys());
    }

    private Money cost(FindingKind finding) {
        Money cost = finding.cost().plus(finding.time().at(settings.hourly()));
        for (String tool : finding.tools()) {
            if (!settings.ownedTools().contains(tool) && tools.containsKey(tool)) {
                cost = cost.plus(tools.get(tool).price().mean());
            }
        }
        return cost;
    }

    /** The best action on a share of the probability; sums, not means, so that the shares add up. */
    private static final class Action {
        private final BuyerRule rule;
        private final double[] profit = new double[WayOut.values().length];
        private double weight;

        Action(BuyerRule rule) {
            this.rule = rule;
        }

        void add(PatternProfit p, double share) {
            double w = p.weight() * share;
            weight += w;
            for (int i = 0; i < profit.length; i++) {
                profit[i] += w * p.profit()[i];
            }
        }

        private double best() {
            double best = Double.NEGATIVE_INFINITY;
            for (WayOut way : WayOut.values()) {
                if (way != WayOut.WALK_AWAY && rule.ways().contains(way)) {
                    best = Math.max(best, profit[way.ordinal()]);
                }
            }
            return best;
        }

        double gain() {
            return Math.max(0, best() - rule.targetProfit().amount() * weight);
        }

        boolean buys() {
            return gain() > 0;
        }

        double expectedProfit() {
            return weight > 0 ? Math.max(0, best() / weight) : 0;
        }
    }
}
