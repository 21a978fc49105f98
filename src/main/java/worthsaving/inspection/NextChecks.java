package worthsaving.inspection;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.Currency;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import worthsaving.catalog.Catalogue;
import worthsaving.catalog.FindingKind;
import worthsaving.deal.Assessment;
import worthsaving.deal.PatternProfit;
import worthsaving.diagnosis.Diagnosis;
import worthsaving.diagnosis.FindingChances;
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
    private final CheckCosts costs;
    private final CheckSettings settings;

    public NextChecks(Catalogue catalogue, CheckSettings settings) {
        this.catalogue = catalogue;
        this.costs = new CheckCosts(catalogue, settings);
        this.settings = settings;
    }

    /**
     * @param assessment of the diagnosis's own failure patterns
     * @return best net value first, those that are not worth their cost included
     */
    public List<CheckValue> rank(Diagnosis diagnosis, Assessment assessment) {
        Set<String> known = diagnosis.evidence().findings().keySet();
        List<PatternProfit> profits = assessment.patternProfits();
        FindingChances chances =
                diagnosis.network().findingChances(profits.stream().map(PatternProfit::pattern).toList());
        Gains gains = new Gains(profits, assessment.rule());
        List<CheckValue> values = new ArrayList<>();
        for (FindingKind finding : catalogue.findings()) {
            if (!known.contains(finding.id()) && possible(finding)) {
                values.add(value(finding, chances.of(finding.id()), gains, assessment.price().currency()));
            }
        }
        values.sort(Comparator.comparing(CheckValue::net).reversed().thenComparing(v -> v.finding().id()));
        return values;
    }

    /**
     * Two checks together, for when no single one is worth its cost.
     *
     * @param assessment of the diagnosis's own failure patterns, at the price in question
     */
    public Optional<LookAhead.Pair> lookAhead(Diagnosis diagnosis, Assessment assessment) {
        Set<String> known = diagnosis.evidence().findings().keySet();
        List<FindingKind> open = catalogue.findings().stream()
                .filter(f -> !known.contains(f.id()) && possible(f)).toList();
        return new LookAhead(costs).best(open, diagnosis, assessment);
    }

    private boolean possible(FindingKind finding) {
        return settings.stages().contains(finding.stage())
                && settings.leaves().contains(finding.sellerAllows())
                && (settings.damaging() || !finding.canDoDamage());
    }

    private CheckValue value(FindingKind finding, double[] chances, Gains gains, Currency currency) {
        Gains.Best now = gains.now();
        Gains.Split split = gains.split(chances);
        Gains.Best present = split.present();
        Gains.Best absent = split.absent();
        return new CheckValue(
                finding,
                Probability.of(Math.min(1, present.weight() / now.weight())),
                new Money(split.gainOver(now), currency),
                costs.of(finding),
                new Money(present.expectedProfit(), currency),
                new Money(absent.expectedProfit(), currency),
                present.buys() != absent.buys());
    }
}
