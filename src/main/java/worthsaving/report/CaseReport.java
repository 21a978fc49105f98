package worthsaving.report;

import java.io.IOException;
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
import worthsaving.diagnosis.Belief;
import worthsaving.diagnosis.Influence;
import worthsaving.diagnosis.Story;
import worthsaving.inspection.CheckValue;
import worthsaving.inspection.LookAhead;
import worthsaving.quantity.Money;
import worthsaving.ranking.Appraisal;
import worthsaving.valuation.ValueForecast;

/** One judged car as text: verdict first, then what it rests on. */
public final class CaseReport {

    private static final int ITEMS_SHOWN = 12;
    private static final int CHECKS_SHOWN = 6;
    private static final int STORIES_SHOWN = 4;
    private static final double WORTH_SHOWING = 0.03;

    private final Appraisal appraisal;
    private final Map<String, FailureItem> items;
    private final Map<String, FindingKind> findings;
    private final PreventiveReport whileInThere;
    private final PlanReport plan;
    private final WaysReport ways;
    private final Optional<LookAhead.Pair> together;

    public CaseReport(Appraisal appraisal, Catalogue catalogue) {
        this(appraisal, catalogue, PreventiveReport.NONE);
    }

    /** With what is worth renewing while the car is open. */
    public CaseReport(Appraisal appraisal, Catalogue catalogue, PreventiveReport whileInThere) {
        this(appraisal, catalogue, whileInThere, new PlanReport(appraisal.likelyPlan(), Map.of(), Optional.empty()));
    }

    /** With where the parts can come from, too. */
    public CaseReport(Appraisal appraisal, Catalogue catalogue, PreventiveReport whileInThere, PlanReport plan) {
        this(appraisal, catalogue, whileInThere, plan, Optional.empty());
    }

    /** @param together two checks that are worth making together, where no single one is */
    public CaseReport(Appraisal appraisal, Catalogue catalogue, PreventiveReport whileInThere, PlanReport plan,
            Optional<LookAhead.Pair> together) {
        this.appraisal = appraisal;
        this.together = together;
        this.plan = plan;
        this.ways = new WaysReport(appraisal, catalogue.moneyById().get("rule_share").figure().mode() / 100);
        this.whileInThere = whileInThere;
        this.items = catalogue.itemsById();
        this.findings = catalogue.findingsById();
    }

    /** The decision and the figures behind it, on about one screen. */
    public void summary(Appendable out) throws IOException {
        header(out);
        value(out);
        failedItems(out);
        title(out, "Repair of what is likelier failed than not");
        plan.text(out);
        whileInThere.text(out);
        title(out, "Ways out at " + Words.whole(appraisal.assessment().price()));
        ways.text(out);
        checks(out);
        cautions(out);
        out.append('\n').append(Words.ESTIMATES).append('\n');
    }

    /** Where the figures come from: value feature by feature, items finding by finding. */
    public void reasons(Appendable out) throws IOException {
        header(out);
        valueReasons(out);
        itemReasons(out);
        stories(out);
        assumptions(out);
    }

    private void header(Appendable out) throws IOException {
        say(out, appraisal.listing().id() + ": " + appraisal.listing().vehicle().label()
                + appraisal.listing().ask().get().map(m -> ", asked " + Words.whole(m)).orElse(", no price asked")
                + " " + appraisal.value().currency().getCurrencyCode());
        say(out, appraisal.verdict().headline());
        for (String reason : appraisal.verdict().reasons()) {
            say(out, "  - " + reason);
        }
        for (String change : appraisal.verdict().wouldChange()) {
            say(out, "  What would change it: " + change);
        }
        Assessment a = appraisal.assessment();
        say(out, "Opening offer " + a.mostToPay().opening().map(Words::whole).orElse("none") + ", most to pay "
                + a.mostToPay().wholeLimit().map(Words::whole).orElse("nothing") + ", break-even "
                + a.mostToPay().breakEven().map(Words::whole).orElse("none") + ".");
    }

    private void value(Appendable out) throws IOException {
        ValueForecast v = appraisal.value();
        title(out, "Worth running");
        say(out, Words.whole(v.mean()) + " on average; 80 % between " + Words.whole(v.quantile(0.1)) + " and "
                + Words.whole(v.quantile(0.9)) + "; the worst twentieth averages "
                + Words.whole(v.saleValue().meanOfWorst(0.05)));
        for (String warning : v.warnings()) {
            say(out, "Mind: " + warning);
        }
    }

    private void failedItems(Appendable out) throws IOException {
        title(out, "What may have failed");
        TextTable table = new TextTable().left("item", 64).right("usual").right("now");
        ofInterest().forEach(b -> table.row(name(b.item()), Words.percent(b.prior().value()),
                Words.percent(b.posterior().value())));
        table.write(out);
    }

    private List<Belief> ofInterest() {
        return appraisal.diagnosis().beliefs().stream()
                .filter(b -> b.posterior().value() >= WORTH_SHOWING)
                .sorted(Comparator.comparingDouble(CaseReport::rise).reversed().thenComparing(Belief::item))
                .limit(ITEMS_SHOWN)
                .sorted(Comparator.comparing(Belief::posterior).reversed().thenComparing(Belief::item))
                .toList();
    }

    private static double rise(Belief b) {
        return b.posterior().value() - b.prior().value();
    }

    private void checks(Appendable out) throws IOException {
        title(out, "Checks worth making before paying " + Words.whole(appraisal.checkedAt()));
        List<CheckValue> worth = appraisal.checks().stream()
                .filter(c -> c.net().amount() > 0)
                .limit(CHECKS_SHOWN)
                .toList();
        if (worth.isEmpty()) {
            say(out, "None would change what to do at that price by more than it costs.");
            pair(out);
            return;
        }
        TextTable table = new TextTable().left("how").left("check", 64).right("chance").right("worth").right("costs")
                .right("if met").right("if not");
        for (CheckValue c : worth.stream().sorted(Comparator.comparing(c -> c.finding().stage())).toList()) {
            table.row(Words.stage(c.finding().stage()), c.finding().name(), Words.percent(c.chancePresent().value()), Words.whole(c.gross()),
                    Words.whole(c.cost()), Words.whole(c.profitIfPresent()), Words.whole(c.profitIfAbsent()));
        }
        table.write(out);
        for (CheckValue c : worth) {
            if (c.finding().canDoDamage()) {
                say(out, "Can hurt the car: " + c.finding().name() + ". " + c.finding().caution());
            }
        }
    }

    private void pair(Appendable out) throws IOException {
        if (together.isPresent()) {
            LookAhead.Pair pair = together.get();
            say(out, "Two together would: first, " + pair.first().name() + "?"
                    + pair.ifPresent().map(f -> " If so: " + f.name() + "?").orElse("")
                    + pair.ifAbsent().map(f -> " If not: " + f.name() + "?").orElse("")
                    + " Worth " + Words.whole(pair.net()) + " after their cost.");
        }
    }

    private void cautions(Appendable out) throws IOException {
        List<String> cautions = ofInterest().stream()
                .filter(b -> b.posterior().value() > 0.1)
                .map(b -> items.get(b.item()))
                .filter(i -> i != null && !i.caution().isBlank())
                .map(i -> i.name() + ": " + i.caution())
                .toList();
        if (!cautions.isEmpty()) {
            title(out, "Cautions");
            for (String caution : cautions) {
                say(out, "- " + caution);
            }
        }
    }

    private void valueReasons(Appendable out) throws IOException {
        ValueForecast v = appraisal.value();
        title(out, "Value: " + v.modelName());
        for (ValueForecast.Step step : v.steps()) {
            say(out, String.format(Locale.ROOT, "x %.3f  %s (%s)", step.factor(), step.name(), step.why()));
        }
        TextTable table = new TextTable().left("feature").left("this car").right("money against a typical car");
        v.contributions().forEach(c -> table.row(c.feature(), c.value(), Words.whole(c.money())));
        table.write(out);
    }

    private void itemReasons(Appendable out) throws IOException {
        title(out, "Failed items and the findings that moved them (factor on the odds)");
        for (Belief b : ofInterest()) {
            say(out, name(b.item()) + ": usual " + Words.percent(b.prior().value()) + ", now "
                    + Words.percent(b.posterior().value()));
            appraisal.diagnosis().influences(b.item()).stream()
                    .filter(i -> Math.abs(i.logRatio()) > 0.05)
                    .limit(4)
                    .forEach(i -> sayQuietly(out, "    " + factor(i) + "  " + said(i, b)));
        }
        double conflict = appraisal.diagnosis().conflict();
        if (conflict > 1) {
            say(out, "The findings agree poorly with each other: one may be wrong, or the case is unusual.");
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

    private void stories(Appendable out) throws IOException {
        title(out, "Most probable stories");
        for (Story story : appraisal.diagnosis().stories(STORIES_SHOWN)) {
            say(out, Words.percent(story.probability().value()) + "  "
                    + (story.failed().isEmpty() ? "none of them failed"
                            : story.failed().stream().map(this::name).collect(Collectors.joining(" + "))));
        }
    }

    private void assumptions(Appendable out) throws IOException {
        if (!appraisal.assumptions().isEmpty()) {
            title(out, "Assumed");
            for (String assumption : appraisal.assumptions()) {
                say(out, "- " + assumption);
            }
        }
    }

    private String name(String item) {
        return items.containsKey(item) ? items.get(item).name() : item;
    }

    private String finding(String id) {
        return findings.containsKey(id) ? findings.get(id).name() : name(id);
    }

    private static void title(Appendable out, String text) throws IOException {
        out.append('\n');
        say(out, text);
    }

    private static void say(Appendable out, String text) throws IOException {
        out.append(TextTable.plain(text)).append('\n');
    }

    private static void sayQuietly(Appendable out, String text) {
        try {
            say(out, text);
        } catch (IOException e) {
            throw new java.io.UncheckedIOException(e);
        }
    }

    /** The same figures for scripts. */
    public void json(Appendable out) throws IOException {
        Assessment a = appraisal.assessment();
        JsonReport json = new JsonReport(out, "worthsaving/case", 1)
                .field("id", appraisal.listing().id())
                .field("verdict", appraisal.verdict().kind().name().toLowerCase(Locale.ROOT))
                .field("headline", appraisal.verdict().headline())
                .field("reasons", appraisal.verdict().reasons())
                .field("currency", appraisal.value().currency().getCurrencyCode())
                .field("most_to_pay", a.mostToPay().limit().map(Money::amount).orElse(null))
                .field("opening_offer", a.mostToPay().opening().map(Money::amount).orElse(null))
                .field("break_even", a.mostToPay().breakEven().map(Money::amount).orElse(null))
                .field("would_change", appraisal.verdict().wouldChange())
                .field("value_running", appraisal.value().mean().amount());
        json.beginList("items");
        for (Belief b : appraisal.diagnosis().beliefs()) {
            json.element(Map.of("item", b.item(), "prior", b.prior().value(), "posterior", b.posterior().value()));
        }
        json.endList();
        ways.json(json);
        plan.json(json);
        json.beginList("checks");
        for (CheckValue c : appraisal.checks()) {
            json.element(Map.of("finding", c.finding().id(), "chance_present", c.chancePresent().value(), "gross_value",
                    c.gross().amount(), "cost", c.cost().amount(), "net_value", c.net().amount()));
        }
        whileInThere.json(json.endList());
        json.end();
    }
}
