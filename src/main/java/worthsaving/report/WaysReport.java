package worthsaving.report;

import java.io.IOException;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.Map;
import worthsaving.deal.Assessment;
import worthsaving.deal.Outcome;
import worthsaving.deal.RulesOfThumb;
import worthsaving.deal.WayOut;
import worthsaving.deal.WayResult;
import worthsaving.quantity.Money;
import worthsaving.quantity.ThreePoint;
import worthsaving.ranking.Appraisal;
import worthsaving.repair.RepairPlan;

/**
 * The ways out of one judged car side by side.
 *
 * @param ruleShare share of the running value that a rule of thumb pays at most, less the repair
 */
record WaysReport(Appraisal appraisal, double ruleShare) {

    private static final double WORST = 0.95;

    void text(Prose out) throws IOException {
        Assessment a = appraisal.assessment();
        boolean averse = a.rule().riskTolerance().isPresent();
        TextTable table = new TextTable().left("way").right("expected").right("loss").right("worst 5 %").right("10 %")
                .right("middle").right("90 %").right("per hour").right("cash out").right("at worst").right("hours")
                .right("days").right("pay up to");
        if (averse) {
            table.right("sure");
        }
        for (WayResult w : a.ways()) {
            Object[] row = {w.way().label(), Words.whole(w.expectedProfit()), Words.percent(w.chanceOfLoss()),
                Words.whole(w.meanOfWorstTwentieth()), Words.whole(w.profit().quantile(0.1)),
                Words.whole(w.profit().quantile(0.5)), Words.whole(w.profit().quantile(0.9)),
                w.profitPerHour().isPresent() ? Words.whole(w.profitPerHour().getAsDouble()) : "-",
                Words.whole(w.cashOut().mean()), Words.whole(w.cashOut().quantile(WORST)),
                Math.round(w.ownHours().value()), Math.round(w.days().mean()),
                w.wholeLimit().map(Words::whole).orElse("-"),
                a.certaintyEquivalent(w.way()).map(Words::whole).orElse("")};
            table.row(averse ? row : Arrays.copyOf(row, row.length - 1));
        }
        out.table(table);
        out.say("Cash out is what is laid out before any comes back; at worst, what it does not exceed in 95 of 100"
                + " cases.");
        if (averse) {
            out.say("Sure: what the profit is worth for certain to a risk tolerance of "
                    + Words.whole(a.rule().riskTolerance().get()) + ".");
        }
        WayResult shown = a.best() == WayOut.WALK_AWAY ? a.way(WayOut.REPAIR_AND_SELL) : a.bestWay();
        ThreePoint cases = ThreePoint.extendedPearsonTukey(shown.profit()::quantile);
        out.say("To " + shown.way().label() + ", told in three cases: " + Words.whole(cases.low()) + " (18.5 %), "
                + Words.whole(cases.middle()) + " (63 %), " + Words.whole(cases.high()) + " (18.5 %).");
        if (appraisal.likelyPlan().isPresent()) {
            Money cost = appraisal.likelyPlan().map(RepairPlan::meanCost).orElseThrow();
            out.say("Rule of thumb, " + Words.percent(ruleShare) + " of the running value less the likely repair: "
                    + Words.whole(RulesOfThumb.mostToPay(appraisal.value().mean(), ruleShare, cost)) + "; this tool: "
                    + a.mostToPay().wholeLimit().map(Words::whole).orElse("nothing") + ".");
        }
    }

    void json(JsonReport json) throws IOException {
        Assessment a = appraisal.assessment();
        json.beginList("ways_out");
        for (WayResult w : a.ways()) {
            Map<String, Object> f = new LinkedHashMap<>();
            f.put("way", w.way().label());
            f.put("expected_profit", w.expectedProfit());
            f.put("chance_of_loss", w.chanceOfLoss());
            f.put("mean_of_worst_5_percent", w.meanOfWorstTwentieth());
            quantiles(f, w.profit());
            f.put("certainty_equivalent", a.certaintyEquivalent(w.way()).map(Money::amount).orElse(null));
            f.put("cash_out", w.cashOut().mean());
            f.put("cash_out_p95", w.cashOut().quantile(WORST));
            f.put("own_hours", w.ownHours().value());
            f.put("profit_per_own_hour", w.profitPerHour().isPresent() ? w.profitPerHour().getAsDouble() : null);
            f.put("days", w.days().mean());
            f.put("most_to_pay", w.mostToPay().map(Money::amount).orElse(null));
            json.element(f);
        }
        json.endList();
    }

    private static void quantiles(Map<String, Object> f, Outcome profit) {
        for (int percent : new int[] {5, 10, 50, 90, 95}) {
            f.put("profit_p" + percent, profit.quantile(percent / 100.0));
        }
    }
}
