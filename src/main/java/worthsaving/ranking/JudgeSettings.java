package worthsaving.ranking;

import java.util.Objects;
import java.util.Set;
import java.util.stream.Collectors;
import worthsaving.catalog.Catalogue;
import worthsaving.catalog.Tool;
import worthsaving.deal.BuyerRule;
import worthsaving.deal.DealCase;
import worthsaving.deal.DealTerms;
import worthsaving.deal.Term;
import worthsaving.diagnosis.PatternSettings;
import worthsaving.diagnosis.SellerTrust;
import worthsaving.inspection.CheckSettings;
import worthsaving.quantity.Money;
import worthsaving.quantity.Seed;
import worthsaving.repair.Worker;
import worthsaving.repair.Workshop;

/**
 * All that the user can set about how cars are judged.
 *
 * @param towMilesAssumed how far a car is towed when its listing does not say
 */
public record JudgeSettings(
        Workshop workshop,
        DealTerms terms,
        BuyerRule rule,
        SellerTrust trust,
        CheckSettings checks,
        DealCase.Method method,
        PatternSettings patterns,
        double towMilesAssumed) {

    /** Expected profit wanted per car, and the chance of loss put up with; common practice, no source. */
    private static final double USUAL_CHANCE_OF_LOSS = 0.25;

    public JudgeSettings {
        Objects.requireNonNull(workshop, "workshop");
        Objects.requireNonNull(terms, "terms");
        Objects.requireNonNull(rule, "rule");
        Objects.requireNonNull(trust, "trust");
        Objects.requireNonNull(checks, "checks");
        Objects.requireNonNull(method, "method");
        Objects.requireNonNull(patterns, "patterns");
        if (!(towMilesAssumed >= 0) || Double.isInfinite(towMilesAssumed)) {
            throw new IllegalArgumentException("tow miles must be zero or more, not " + towMilesAssumed);
        }
    }

    public JudgeSettings withRule(BuyerRule other) {
        return new JudgeSettings(workshop, terms, other, trust, checks, method, patterns, towMilesAssumed);
    }

    public JudgeSettings withTerms(DealTerms other) {
        return new JudgeSettings(workshop, other, rule, trust, checks, method, patterns, towMilesAssumed);
    }

    public JudgeSettings withWorkshop(Workshop other) {
        return new JudgeSettings(other, terms, rule, trust, checks, method, patterns, towMilesAssumed);
    }

    public JudgeSettings withChecks(CheckSettings other) {
        return new JudgeSettings(workshop, terms, rule, trust, other, method, patterns, towMilesAssumed);
    }

    public JudgeSettings withTowMiles(double miles) {
        return new JudgeSettings(workshop, terms, rule, trust, checks, method, patterns, miles);
    }

    /** Own hours, in the workshop and in looking, at another worth. */
    public JudgeSettings withHourly(Money hourly) {
        return new JudgeSettings(workshop.withWorker(Worker.OwnHands.at(hourly)), terms, rule, trust,
                CheckSettings.beforeBuying(workshop.ownedTools(), hourly), method, patterns, towMilesAssumed);
    }

    /** With these special tools at hand, in the workshop and in looking. */
    public JudgeSettings withTools(Set<String> tools) {
        return new JudgeSettings(workshop.withTools(tools), terms, rule, trust, new CheckSettings(checks.stages(),
                checks.leaves(), checks.damaging(), tools, checks.hourly()), method, patterns, towMilesAssumed);
    }

    /** Own hands at the catalogue's hourly worth, with the tools it says are at hand, and the catalogue's usual money lines. */
    public static JudgeSettings usual(Catalogue catalogue, Seed seed) {
        DealTerms terms = DealTerms.from(catalogue.moneyLines(), catalogue.currency());
        Money target = new Money(catalogue.moneyById().get("profit_target").figure().mode(), catalogue.currency());
        Workshop workshop = Workshop.ownHands(terms.money(Term.OWN_HOURLY))
                .withTools(catalogue.tools().stream().filter(Tool::atHand).map(Tool::id).collect(Collectors.toSet()));
        return new JudgeSettings(
                workshop,
                terms,
                BuyerRule.of(target, USUAL_CHANCE_OF_LOSS),
                SellerTrust.USUAL,
                CheckSettings.beforeBuying(workshop.ownedTools(), terms.money(Term.OWN_HOURLY)),
                new DealCase.Method(DealCase.Method.USUAL.points(), seed, true),
                PatternSettings.USUAL.withSeed(seed),
                30);
    }
}
