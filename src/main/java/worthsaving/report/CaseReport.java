package worthsaving.report;

import java.io.IOException;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import worthsaving.catalog.Catalogue;
import worthsaving.catalog.FailureItem;
import worthsaving.catalog.FindingKind;
import worthsaving.deal.Assessment;
import worthsaving.deal.WayResult;
import worthsaving.diagnosis.Belief;
import worthsaving.diagnosis.Influence;
import worthsaving.diagnosis.Story;
import worthsaving.inspection.CheckValue;
import worthsaving.inspection.LookAhead;
import worthsaving.quantity.Money;
import worthsaving.ranking.Appraisal;
import worthsaving.valuation.ValueForecast;

/** One judged car as text: verdict first, then what it rests on. */
public final class CaseReport implements Exported {

    private static final int CHECKS_SHOWN = 6;
    private static final int STORIES_SHOWN = 4;

    /**
     * What may be told beside the judgement.
     *
     * @param whileInThere what is worth renewing while the car is open
     * @param plan the likely repair, and where its parts can come from
     * @param background comparables and priced cars beside the value
     * @param together two checks that are worth making together, where no single one is
     */
    public record More(PreventiveReport whileInThere, PlanReport plan, ValueBackground background,
            Optional<LookAhead.Pair> together, VinGuard vin) {}

    private final Appraisal appraisal;
    private final Map<String, FailureItem> items;
    private final Map<String, FindingKind> findings;
    private final More more;
    private final WaysReport ways;
    private final String catalogueVersion;
    private final VinGuard vin;

    public CaseReport(Appraisal appraisal, Catalogue catalogue) {
        this(appraisal, catalogue, PreventiveReport.NONE);
    }

    /** With what is worth renewing while the car is open. */
    public CaseReport(Appraisal appraisal, Catalogue catalogue, PreventiveReport whileInThere) {
        this(appraisal, catalogue, new More(
                whileInThere, new PlanReport(appraisal.likelyPlan(), Map.of(), Optional.empty()), ValueBackground.NONE,
                Optional.empty(), VinGuard.HIDDEN));
    }

    public CaseReport(Appraisal appraisal, Catalogue catalogue, More more) {
        this.appraisal = appraisal;
        this.more = more;
        this.ways = new WaysReport(appraisal, catalogue.moneyById().get("rule_share").figure().mode() / 100);
        this.catalogueVersion = catalogue.version();
        this.vin = more.vin();
        this.items = catalogue.itemsById();
        this.findings = catalogue.findingsById();
    }

    /** The decision and the figures behind it, on about one screen. */
    public void summary(Appendable out) throws IOException {
        summary(Prose.plain(out));
        out.append('\n').append(Words.ESTIMATES).append('\n');
    }

    /** The same as a Markdown document. */
    @Override
    public void markdown(Appendable out) throws IOException {
        Prose.document(out, vin.text(named()), this::summary);
    }

    private void summary(Prose out) throws IOException {
        header(out);
        value(out);
        failedItems(out);
        out.title("Repair of what is likelier failed than not");
        more.plan().text(out);
        more.whileInThere().text(out);
        out.title("Ways out at " + Words.whole(appraisal.assessment().price()));
        ways.text(out);
        checks(out);
        cautions(out);
    }

    /** Where the figures come from: value feature by feature, items finding by finding. */
    public void reasons(Appendable out) throws IOException {
        Prose prose = Prose.plain(out);
        header(prose);
        valueReasons(prose);
        itemReasons(prose);
        stories(prose);
        assumptions(prose);
    }

    private String named() {
        return appraisal.listing().id() + ": " + appraisal.listing().vehicle().label();
    }

    private void header(Prose out) throws IOException {
        out.say(vin.text(named())
                + appraisal.listing().ask().get().map(m -> ", asked " + Words.whole(m)).orElse(", no price asked")
                + " " + appraisal.value().currency().getCurrencyCode());
        out.say(appraisal.verdict().headline());
        for (String reason : appraisal.verdict().reasons()) {
            out.point(reason);
        }
        for (String change : appraisal.verdict().wouldChange()) {
            out.say("  What would change it: " + change);
        }
        Assessment a = appraisal.assessment();
        out.say("Opening offer " + a.mostToPay().opening().map(Words::whole).orElse("none") + ", most to pay "
                + a.mostToPay().wholeLimit().map(Words::whole).orElse("nothing") + ", break-even "
                + a.mostToPay().breakEven().map(Words::whole).orElse("none") + ".");
    }

    private void value(Prose out) throws IOException {
        ValueForecast v = appraisal.value();
        out.title("Worth running");
        out.say(Words.whole(v.mean()) + " on average; 80 % between " + Words.whole(v.quantile(0.1)) + " and "
                + Words.whole(v.quantile(0.9)) + "; the worst twentieth averages "
                + Words.whole(v.saleValue().meanOfWorst(0.05)));
        warnings(out, v);
        more.background().level(out);
        more.background().alike(out);
    }

    private static void warnings(Prose out, ValueForecast v) throws IOException {
        for (String warning : v.warnings()) {
            out.say("Mind: " + warning);
        }
    }

    private void failedItems(Prose out) throws IOException {
        out.title("What may have failed");
        TextTable table = new TextTable().left("item", 64).right("usual").right("now");
        Suspects.of(appraisal).forEach(b -> table.row(name(b.item()), Words.percent(b.prior().value()),
                Words.percent(b.posterior().value())));
        out.table(table);
    }

    private void checks(Prose out) throws IOException {
        out.title("Checks worth making before paying " + Words.whole(appraisal.checkedAt()));
        List<CheckValue> worth = appraisal.checks().stream()
                .filter(c -> c.net().amount() > 0)
                .limit(CHECKS_SHOWN)
                .toList();
        if (worth.isEmpty()) {
            out.say("None would change what to do at that price by more than it costs.");
            pair(out);
            return;
        }
        TextTable table = new TextTable().left("how").left("check", 64).right("chance").right("worth").right("costs")
                .right("if met").right("if not");
        for (CheckValue c : worth.stream().sorted(Comparator.comparing(c -> c.finding().stage())).toList()) {
            table.row(Words.stage(c.finding().stage()), c.finding().name(), Words.percent(c.chancePresent().value()),
                    Words.whole(c.gross()),
                    Words.whole(c.cost()), Words.whole(c.profitIfPresent()), Words.whole(c.profitIfAbsent()));
        }
        out.table(table);
        for (CheckValue c : worth) {
            if (c.finding().canDoDamage()) {
                out.say("Can hurt the car: " + c.finding().name() + ". " + c.finding().caution());
            }
        }
    }

    private void pair(Prose out) throws IOException {
        if (more.together().isPresent()) {
            LookAhead.Pair pair = more.together().get();
            out.say("Two together would: first, " + pair.first().name() + "?"
                    + pair.ifPresent().map(f -> " If so: " + f.name() + "?").orElse("")
                    + pair.ifAbsent().map(f -> " If not: " + f.name() + "?").orElse("")
                    + " Worth " + Words.whole(pair.net()) + " after their cost.");
        }
    }

    private void cautions(Prose out) throws IOException {
        List<String> cautions = Suspects.toMind(appraisal).stream()
                .map(b -> items.get(b.item()))
                .filter(i -> i != null && !i.caution().isBlank())
                .map(i -> i.name() + ": " + i.caution())
                .toList();
        if (!cautions.isEmpty()) {
            out.title("Cautions");
            for (String caution : cautions) {
                out.point(caution);
            }
        }
    }

    private void valueReasons(Prose out) throws IOException {
        ValueForecast v = appraisal.value();
        out.title("Value: " + v.modelName());
        for (ValueForecast.Step step : v.steps()) {
            out.say(String.format(Locale.ROOT, "x %.3f  %s (%s)", step.factor(), step.name(), step.why()));
        }
        more.background().contributions(v, out);
        warnings(out, v);
        more.background().level(out);
        more.background().alike(out);
    }

    private void itemReasons(Prose out) throws IOException {
        out.title("Failed items and the findings that moved them (factor on the odds)");
        for (Belief b : Suspects.of(appraisal)) {
            out.say(name(b.item()) + ": usual " + Words.percent(b.prior().value()) + ", now "
                    + Words.percent(b.posterior().value()));
            List<String> points = new ArrayList<>();
            appraisal.diagnosis().influences(b.item()).stream()
                    .filter(i -> Math.abs(i.logRatio()) > 0.05)
                    .limit(4)
                    .forEach(i -> points.add(factor(i) + "  " + said(i, b)));
            for (String point : points) {
                out.point(point);
            }
        }
        double conflict = appraisal.diagnosis().conflict();
        if (conflict > 1) {
            out.say("The findings agree poorly with each other: one may be wrong, or the case is unusual.");
        }
    }

    private String said(Influence i, Belief about) {
        boolean met = i.seen().ifTrue() >= i.seen().ifFalse();
        if (i.subject().equals(about.item())) {
            return met ? "it was named or found failed" : "it was denied or found sound";
        }
        return finding(i.subject()) + (met ? "" : ": not so");
    }

    private static String factor(Influence i) {
        return Double.isInfinite(i.logRatio())
                ? "settled"
                : String.format(Locale.ROOT, "x %.2f", Math.exp(i.logRatio()));
    }

    private void stories(Prose out) throws IOException {
        out.title("Most probable stories");
        for (Story story : appraisal.diagnosis().stories(STORIES_SHOWN)) {
            out.say(Words.percent(story.probability().value()) + "  "
                    + (story.failed().isEmpty() ? "none of them failed"
                            : story.failed().stream().map(this::name).collect(Collectors.joining(" + "))));
        }
    }

    private void assumptions(Prose out) throws IOException {
        if (!appraisal.assumptions().isEmpty()) {
            out.title("Assumed");
            for (String assumption : appraisal.assumptions()) {
                out.point(assumption);
            }
        }
    }

    private String name(String item) {
        return items.containsKey(item) ? items.get(item).name() : item;
    }

    private String finding(String id) {
        return findings.containsKey(id) ? findings.get(id).name() : name(id);
    }

    /** One figure a row, for spreadsheets: which part of the judgement, of what, what, how much. */
    @Override
    public void rows(RowWriter.Maker form) throws IOException {
        RowWriter rows = form.of("part", "id", "name", "measure", "value");
        String id = vin.text(appraisal.listing().id());
        Assessment a = appraisal.assessment();
        rows.row("car", id, vin.text(appraisal.listing().vehicle().label()), "verdict", appraisal.verdict().headline());
        Optional<String> number = vin.of(appraisal.listing().vehicle());
        if (number.isPresent()) {
            rows.row("car", id, "vin", "vin", number.get());
        }
        rows.row("car", id, "most to pay", "money", a.mostToPay().limit().map(Money::amount).orElse(null));
        rows.row("car", id, "opening offer", "money", a.mostToPay().opening().map(Money::amount).orElse(null));
        rows.row("car", id, "worth running", "money", appraisal.value().mean().amount());
        for (Belief b : appraisal.diagnosis().beliefs()) {
            rows.row("item", b.item(), name(b.item()), "prior", b.prior().value());
            rows.row("item", b.item(), name(b.item()), "posterior", b.posterior().value());
        }
        for (WayResult w : a.ways()) {
            String way = w.way().name().toLowerCase(Locale.ROOT);
            rows.row("way", way, w.way().label(), "expected_profit", w.expectedProfit());
            rows.row("way", way, w.way().label(), "chance_of_loss", w.chanceOfLoss());
            rows.row("way", way, w.way().label(), "own_hours", w.ownHours().value());
            rows.row("way", way, w.way().label(), "days", w.days().mean());
        }
        for (CheckValue c : appraisal.checks()) {
            rows.row("check", c.finding().id(), c.finding().name(), "chance_present", c.chancePresent().value());
            rows.row("check", c.finding().id(), c.finding().name(), "net_value", c.net().amount());
        }
    }

    /** The same figures for scripts. */
    @Override
    public void json(Appendable out) throws IOException {
        Assessment a = appraisal.assessment();
        JsonReport json = new JsonReport(out, "worthsaving/case", 1)
                .field("id", vin.text(appraisal.listing().id()))
                .field("catalogue", catalogueVersion)
                .field("price_model", appraisal.value().modelName())
                .field("seed", a.method().seed().value())
                .field("verdict", appraisal.verdict().kind().name().toLowerCase(Locale.ROOT))
                .field("headline", appraisal.verdict().headline())
                .field("reasons", appraisal.verdict().reasons())
                .field("currency", appraisal.value().currency().getCurrencyCode())
                .field("most_to_pay", a.mostToPay().limit().map(Money::amount).orElse(null))
                .field("opening_offer", a.mostToPay().opening().map(Money::amount).orElse(null))
                .field("break_even", a.mostToPay().breakEven().map(Money::amount).orElse(null))
                .field("would_change", appraisal.verdict().wouldChange())
                .field("value_running", appraisal.value().mean().amount());
        Optional<String> number = vin.of(appraisal.listing().vehicle());
        if (number.isPresent()) {
            json.field("vin", number.get());
        }
        json.beginList("items");
        for (Belief b : appraisal.diagnosis().beliefs()) {
            json.element(Map.of("item", b.item(), "prior", b.prior().value(), "posterior", b.posterior().value()));
        }
        json.endList();
        ways.json(json);
        more.plan().json(json);
        json.beginList("checks");
        for (CheckValue c : appraisal.checks()) {
            json.element(Map.of("finding", c.finding().id(), "chance_present", c.chancePresent().value(), "gross_value",
                    c.gross().amount(), "cost", c.cost().amount(), "net_value", c.net().amount()));
        }
        more.whileInThere().json(json.endList());
        more.background().json(json);
        json.end();
    }
}
