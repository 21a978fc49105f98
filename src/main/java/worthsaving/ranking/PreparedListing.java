package worthsaving.ranking;

import java.util.List;
import java.util.Optional;
import worthsaving.deal.Assessment;
import worthsaving.deal.BuyerRule;
import worthsaving.deal.DealTerms;
import worthsaving.deal.PreparedDeal;
import worthsaving.deal.Verdict;
import worthsaving.diagnosis.Diagnosis;
import worthsaving.inspection.CheckValue;
import worthsaving.inspection.LookAhead;
import worthsaving.inspection.NextChecks;
import worthsaving.quantity.Money;
import worthsaving.repair.RepairPlan;
import worthsaving.valuation.ValueForecast;
import worthsaving.vehicle.Listing;

/**
 * A listing whose failed items are inferred and whose repairs and sale values are drawn, to be judged at
 * any price, rule and money lines. Gives what {@link Judge#judge} gives, without doing the costly part
 * again. Safe to share between threads.
 */
public final class PreparedListing {

    /** A result rarer than this does not hold up a decision; common practice, no source. */
    private static final double OFTEN_ENOUGH = 0.1;

    private final Listing listing;
    private final ValueForecast value;
    private final Diagnosis diagnosis;
    private final PreparedDeal deal;
    private final Optional<RepairPlan> likelyPlan;
    private final NextChecks checks;
    private final List<String> assumptions;

    PreparedListing(
            Listing listing,
            ValueForecast value,
            Diagnosis diagnosis,
            PreparedDeal deal,
            Optional<RepairPlan> likelyPlan,
            NextChecks checks,
            List<String> assumptions) {
        this.listing = listing;
        this.value = value;
        this.diagnosis = diagnosis;
        this.deal = deal;
        this.likelyPlan = likelyPlan;
        this.checks = checks;
        this.assumptions = assumptions;
    }

    public Listing listing() {
        return listing;
    }

    public Diagnosis diagnosis() {
        return diagnosis;
    }

    /** The deal alone, for reckoning that needs no verdict. */
    public PreparedDeal deal() {
        return deal;
    }

    /** The same listing with its deal drawn or weighed otherwise. */
    public PreparedListing with(PreparedDeal other) {
        return with(other, likelyPlan);
    }

    PreparedListing with(PreparedDeal other, Optional<RepairPlan> plan) {
        return new PreparedListing(listing, value, diagnosis, other, plan, checks, assumptions);
    }

    /** @param ask asking price; without one the outcomes are shown at the most to pay */
    public Appraisal appraise(DealTerms terms, BuyerRule rule, Optional<Money> ask) {
        Assessment assessment = deal.assess(terms, rule, ask);
        List<CheckValue> ranked = checks.rank(diagnosis, assessment);
        Verdict verdict = verdict(assessment, ranked);
        if (verdict.kind() != Verdict.Kind.BUY_BELOW || ask.isEmpty()) {
            return appraisal(assessment, verdict, ranked, assessment.price());
        }
        Money offer = assessment.mostToPay().limit().orElseThrow();
        return appraisal(assessment, verdict, checks.rank(diagnosis, deal.assess(terms, rule, Optional.of(offer))), offer);
    }

    /** Two checks that are worth making together at a price, where no single one is. */
    Optional<LookAhead.Pair> lookAhead(DealTerms terms, BuyerRule rule, Money price) {
        return checks.lookAhead(diagnosis, deal.assess(terms, rule, Optional.of(price)));
    }

    private Appraisal appraisal(Assessment assessment, Verdict verdict, List<CheckValue> ranked, Money checkedAt) {
        return new Appraisal(
                listing, value, diagnosis, assessment, verdict, likelyPlan, ranked, checkedAt, assumptions);
    }

    /**
     * A check that may well turn the decision, and is worth its cost, comes before the decision; what the deal itself
     * wants looked at comes before both.
     */
    private Verdict verdict(Assessment assessment, List<CheckValue> ranked) {
        if (assessment.verdict().kind() == Verdict.Kind.CHECK_FIRST) {
            return assessment.verdict();
        }
        return ranked.stream()
                .limit(1)
                .filter(c -> c.decides() && c.net().amount() > 0)
                .filter(c -> Math.min(c.chancePresent().value(), 1 - c.chancePresent().value()) >= OFTEN_ENOUGH)
                .findFirst()
                .map(c -> assessment.verdict().afterCheck("Look before deciding: " + c.finding().name() + "?"))
                .orElse(assessment.verdict());
    }
}
