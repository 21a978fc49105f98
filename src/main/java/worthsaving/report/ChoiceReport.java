package worthsaving.report;

import java.io.IOException;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;
import worthsaving.deal.Outcome;
import worthsaving.deal.ToolNeed;
import worthsaving.quantity.Normal;
import worthsaving.ranking.Budget;
import worthsaving.ranking.ChosenSet;
import worthsaving.ranking.LotChoice;
import worthsaving.ranking.Standing;

/** A set of cars to buy together, what was left out and why. */
public final class ChoiceReport implements Exported {

    private static final int VERSION = 1;
    private static final double WORTH_SHOWING = 0.05;

    private final LotChoice choice;
    private final VinGuard vin;

    public ChoiceReport(LotChoice choice) {
        this(choice, VinGuard.HIDDEN);
    }

    /** With or without the vehicle identification number in an id. */
    public ChoiceReport(LotChoice choice, VinGuard vin) {
        this.vin = vin;
        this.choice = choice;
    }

    @Override
    public void markdown(Appendable out) throws IOException {
        Prose.document(out, heading(), prose -> body(prose, vin));
    }

    /** For people. */
    public void text(Appendable out) throws IOException {
        Prose prose = Prose.plain(out);
        prose.say(heading());
        body(prose, VinGuard.SHOWN);
    }

    private String heading() {
        return choice.chosen().isEmpty() ? "Buy none of them." : "Buy together:";
    }

    private void body(Prose out, VinGuard guard) throws IOException {
        ChosenSet set = choice.set();
        Budget budget = choice.budget();
        TextTable table = new TextTable().left("id", 14).left("car", 26).left("verdict").right("ask").right("expected")
                .right("loss").right("cash out").right("hours").left("way");
        for (Standing s : choice.chosen()) {
            table.row(guard.text(s.listing().id()), guard.text(s.listing().vehicle().label()), Words.verdict(s.verdict().kind()),
                    s.listing().ask().get().map(Words::whole).orElse("?"), Words.whole(s.expectedProfit()),
                    Words.percent(s.chanceOfLoss()), Words.whole(s.cashOut()), Words.hours(s.ownHours().value()),
                    s.way().label());
        }
        out.table(table);
        out.say("Together: cash " + used(set.cash(), budget.cash()) + ", bays " + used(set.bays(), budget.bays())
                + ", own hours " + used(set.hours(), budget.hours()) + ".");
        tools(out, set);
        risk(out);
        leftOut(out, guard);
    }

    private static void tools(Prose out, ChosenSet set) throws IOException {
        List<ToolNeed> likeliest = set.tools().stream().filter(t -> t.chance().value() >= WORTH_SHOWING)
                .sorted(Comparator.comparing(ToolNeed::chance).reversed().thenComparing(ToolNeed::tool)).toList();
        if (!likeliest.isEmpty()) {
            out.say("Tools that may have to be bought, once for all: " + likeliest.stream()
                    .map(t -> t.name() + " " + Words.whole(t.price()) + " (" + Words.percent(t.chance().value()) + ")")
                    .collect(Collectors.joining("; ")) + ". Sharing them saves " + Words.whole(set.toolsShared())
                    + " on average.");
        }
    }

    private void risk(Prose out) throws IOException {
        Outcome all = choice.together();
        if (!choice.chosen().isEmpty()) {
            out.say("Profit of the set: " + Words.whole(choice.set().profit()) + " on average, chance of loss "
                    + Words.percent(all.chanceOfLoss()) + ", mean of the worst 5 % " + Words.whole(all.meanOfWorst(.05))
                    + ", 80 % between " + Words.whole(all.quantile(.1)) + " and " + Words.whole(all.quantile(.9))
                            + ".");
            out.say(String.format(Locale.ROOT, "All sale values are taken to move together by %.0f %% (one standard "
                            + "deviation, a guess; --market sets it). If they did not: chance of loss %s, "
                            + "worst 5 %% %s. A market in its worst twentieth takes %.0f %% off every sale.",
                    100 * choice.settings().marketSpread(), Words.percent(choice.apart().chanceOfLoss()),
                    Words.whole(choice.apart().meanOfWorst(.05)), worstMarket()));
        }
    }

    /** Percent off the mean, averaged over the worst twentieth of markets. */
    private double worstMarket() {
        double spread = choice.settings().marketSpread();
        return spread > 0 ? -100 * new Normal(0, spread).meanOfWorst(.05) : 0;
    }

    private void leftOut(Prose out, VinGuard guard) throws IOException {
        if (choice.leftOut().isEmpty()) {
            return;
        }
        out.title("Left out:");
        TextTable table = new TextTable().left("id", 14).left("car", 26).left("why").left("", 70).right("expected")
                .right("in the set costs");
        for (LotChoice.LeftOut no : choice.leftOut()) {
            table.row(guard.text(no.standing().listing().id()), guard.text(no.standing().listing().vehicle().label()),
                    reasons(no), guard.text(no.words()),
                    Words.whole(no.standing().expectedProfit()),
                    no.costOfForcing().isPresent() ? Words.whole(no.costOfForcing().getAsDouble()) : "-");
        }
        out.table(table);
    }

    private static String reasons(LotChoice.LeftOut no) {
        return no.reasons().stream().map(r -> r.name().toLowerCase(Locale.ROOT).replace('_', ' '))
                .collect(Collectors.joining(", "));
    }

    private static String used(double used, double limit) {
        return Words.whole(used) + (Double.isInfinite(limit) ? ", no limit" : " of " + Words.whole(limit));
    }

    /** One row per listing, chosen ones first. */
    @Override
    public void rows(RowWriter.Maker form) throws IOException {
        RowWriter rows = form.of("id", "car", "chosen", "reasons", "words", "expected_profit",
                "chance_of_loss", "cash_out", "own_hours", "cost_of_forcing");
        for (Standing s : choice.chosen()) {
            row(rows, s, "yes", "", "", null);
        }
        for (LotChoice.LeftOut no : choice.leftOut()) {
            row(rows, no.standing(), "no", reasons(no), no.words(),
                    no.costOfForcing().isPresent() ? cents(no.costOfForcing().getAsDouble()) : null);
        }
    }

    private void row(RowWriter rows, Standing s, String chosen, String reasons, String words, Double forcing)
            throws IOException {
        rows.row(vin.text(s.listing().id()), vin.text(s.listing().vehicle().label()), chosen, reasons, vin.text(words),
                cents(s.expectedProfit().amount()), s.chanceOfLoss(), cents(s.cashOut().amount()),
                s.ownHours().value(), forcing);
    }

    @Override
    public void json(Appendable out) throws IOException {
        ChosenSet set = choice.set();
        JsonReport json = new JsonReport(out, "worthsaving/choice", VERSION)
                .field("expected_profit", cents(set.profit()))
                .field("cash", cents(set.cash())).field("cash_limit", limit(choice.budget().cash()))
                .field("bays", set.bays()).field("bays_limit", limit(choice.budget().bays()))
                .field("own_hours", set.hours()).field("own_hours_limit", limit(choice.budget().hours()))
                .field("market_spread", choice.settings().marketSpread())
                .field("together", risk(choice.together())).field("apart", risk(choice.apart()))
                .field("tools_shared", cents(set.toolsShared()));
        json.beginList("tools");
        for (ToolNeed t : set.tools()) {
            json.element(Map.of("tool", t.tool(), "price", cents(t.price().amount()), "chance", t.chance().value()));
        }
        json.endList().beginList("chosen");
        for (Standing s : choice.chosen()) {
            json.element(fields(s));
        }
        json.endList().beginList("left_out");
        for (LotChoice.LeftOut no : choice.leftOut()) {
            Map<String, Object> f = fields(no.standing());
            f.put("reasons", List.of(reasons(no).split(", ")));
            f.put("words", vin.text(no.words()));
            f.put("cost_of_forcing", no.costOfForcing().isPresent() ? cents(no.costOfForcing().getAsDouble()) : null);
            json.element(f);
        }
        json.endList().end();
    }

    private static Map<String, Object> risk(Outcome o) {
        return Map.of("mean", cents(o.mean()), "chance_of_loss", o.chanceOfLoss(), "mean_of_worst_5_percent",
                cents(o.meanOfWorst(.05)), "p10", cents(o.quantile(.1)), "p90", cents(o.quantile(.9)));
    }

    private Map<String, Object> fields(Standing s) {
        Map<String, Object> f = new LinkedHashMap<>();
        f.put("id", vin.text(s.listing().id()));
        f.put("car", vin.text(s.listing().vehicle().label()));
        f.put("expected_profit", cents(s.expectedProfit().amount()));
        f.put("chance_of_loss", s.chanceOfLoss());
        f.put("cash_out", cents(s.cashOut().amount()));
        f.put("own_hours", s.ownHours().value());
        return f;
    }

    private static Double limit(double limit) {
        return Double.isInfinite(limit) ? null : limit;
    }

    private static double cents(double amount) {
        return Math.round(amount * 100) / 100.0;
    }
}
