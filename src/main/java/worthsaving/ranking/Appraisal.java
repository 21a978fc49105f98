package worthsaving.ranking;

import java.util.List;
import java.util.Optional;
import worthsaving.deal.Assessment;
import worthsaving.deal.Verdict;
import worthsaving.diagnosis.Diagnosis;
import worthsaving.inspection.CheckValue;
import worthsaving.quantity.Money;
import worthsaving.repair.RepairPlan;
import worthsaving.valuation.ValueForecast;
import worthsaving.vehicle.Listing;

/**
 * One listing judged.
 *
 * @param verdict the deal's verdict, behind a check where one may well turn it
 * @param likelyPlan plan for the items more likely failed than not; empty when nothing allowed mends them
 * @param checks the checks not yet made, best net value first
 * @param checkedAt price the checks are valued at: the asking price, or the most to pay where only that will do
 * @param assumptions what was assumed because the listing does not say, in words
 */
public record Appraisal(
        Listing listing,
        ValueForecast value,
        Diagnosis diagnosis,
        Assessment assessment,
        Verdict verdict,
        Optional<RepairPlan> likelyPlan,
        List<CheckValue> checks,
        Money checkedAt,
        List<String> assumptions) {

    public Appraisal {
        checks = List.copyOf(checks);
        assumptions = List.copyOf(assumptions);
    }

    /** The check worth making next, if any is worth its cost. */
    public Optional<CheckValue> nextCheck() {
        return checks.stream().filter(c -> c.net().amount() > 0).findFirst();
    }
}
