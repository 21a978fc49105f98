package worthsaving.report.sheet;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import worthsaving.catalog.Catalogue;
import worthsaving.catalog.FindingKind;
import worthsaving.deal.Assessment;
import worthsaving.deal.Verdict;
import worthsaving.deal.WayOut;
import worthsaving.deal.WayResult;
import worthsaving.inspection.CheckValue;
import worthsaving.quantity.Money;
import worthsaving.ranking.Appraisal;
import worthsaving.report.Words;

/** The sheet for whoever may buy the car to make money on it: up to which price, because of what, and what to check. */
public final class FlipperSheet {

    private static final int CHECKS = 6;

    private final Appraisal appraisal;
    private final Assessment deal;
    private final Common common;
    private final WayResult way;

    private FlipperSheet(Appraisal appraisal, Catalogue catalogue, SheetSettings settings) {
        this.appraisal = appraisal;
        this.deal = appraisal.assessment();
        this.common = new Common(appraisal, catalogue, settings);
        this.way = deal.best() == WayOut.WALK_AWAY ? deal.way(WayOut.REPAIR_AND_SELL) : deal.bestWay();
    }

    public static DecisionSheet of(Appraisal appraisal, Catalogue catalogue, SheetSettings settings) {
        return new FlipperSheet(appraisal, catalogue, settings).sheet();
    }

    private DecisionSheet sheet() {
        Verdict verdict = appraisal.verdict();
        List<CheckValue> checks = appraisal.checks().stream().filter(c -> c.net().amount() > 0).limit(CHECKS).toList();
        List<FindingKind> looks = checks.stream().map(CheckValue::finding).toList();
        List<String> because = new ArrayList<>(verdict.reasons().stream().map(Common::capital).toList());
        verdict.wouldChange().forEach(change -> because.add("Would change it: " + change));
        return new DecisionSheet(Audience.FLIPPER, common.title(), common.facts(), tone(verdict.kind()),
                Words.verdict(verdict.kind()), verdict.headline(), figures(),
                Section.Lines.of("Because", Section.Importance.DECIDES, because), chart(),
                List.of(common.broken(Section.Importance.DECIDES), checks(checks), ways(), common.plan()),
                common.cautions(looks), common.guesses(List.of(worth())), List.of(), List.of(), common.provenance());
    }

    private static Tone tone(Verdict.Kind kind) {
        return switch (kind) {
            case BUY -> Tone.GO;
            case BUY_BELOW, CHECK_FIRST -> Tone.CARE;
            case WALK_AWAY, HARD_STOP -> Tone.STOP;
        };
    }

    /** Where something rules the car out whatever the profit, no price stands beside it. */
    private List<DecisionSheet.Figure> figures() {
        boolean never = appraisal.verdict().kind() == Verdict.Kind.HARD_STOP;
        return List.of(
                new DecisionSheet.Figure("asked", plain(deal.ask())),
                new DecisionSheet.Figure("buy up to", never ? "\u2013" : plain(deal.mostToPay().wholeLimit())),
                new DecisionSheet.Figure("opening offer", never ? "\u2013" : plain(deal.mostToPay().opening())),
                new DecisionSheet.Figure("expected profit, " + way.way().label(), Words.whole(way.expectedProfit())),
                new DecisionSheet.Figure("chance of a loss", Words.percent(way.chanceOfLoss())),
                new DecisionSheet.Figure("worst 5 % average", Words.whole(way.meanOfWorstTwentieth())),
                new DecisionSheet.Figure("own hours", Words.whole(way.ownHours().value())));
    }

    private SheetChart chart() {
        String title = "Profit of \u201c" + way.way().label() + "\u201d at " + Common.money(deal.price())
                + ", dark: loss";
        return SheetChart.Spread.of(title, way.profit(), 0, true, List.of(
                new SheetChart.Mark("worst 5 %", way.profit().quantile(0.05)),
                new SheetChart.Mark("mean", way.profit().mean()),
                new SheetChart.Mark("best 5 %", way.profit().quantile(0.95))));
    }

    private Section.Table checks(List<CheckValue> checks) {
        List<List<String>> rows = checks.stream()
                .map(c -> List.of(c.finding().name(), Words.percent(c.chancePresent().value()), Words.whole(c.gross()),
                        Words.whole(c.cost()), Words.whole(c.profitIfPresent()), Words.whole(c.profitIfAbsent())))
                .toList();
        return new Section.Table("Next checks, before paying " + appraisal.checkedAt().currency().getCurrencyCode() + " "
                + Words.whole(appraisal.checkedAt().wholeDown()),
                Section.Importance.DECIDES,
                List.of(Section.Column.text("check"), Section.Column.number("chance"), Section.Column.number("worth"),
                        Section.Column.number("costs"), Section.Column.number("profit if met"),
                        Section.Column.number("profit if not")),
                rows, rows.isEmpty() ? "None would change what to do at that price by more than it costs." : "", 0);
    }

    private Section.Table ways() {
        List<List<String>> rows = deal.ways().stream()
                .sorted(Comparator.comparingDouble(WayResult::expectedProfit).reversed())
                .map(w -> List.of(w.way().label(), Words.whole(w.expectedProfit()), Words.percent(w.chanceOfLoss()),
                        Words.whole(w.meanOfWorstTwentieth()), Words.whole(w.cashOut().mean()),
                        Words.whole(w.ownHours().value()), Words.whole(w.days().mean()),
                        plain(w.wholeLimit())))
                .toList();
        return new Section.Table("Ways out at " + Common.money(deal.price()), Section.Importance.SUPPORTS,
                List.of(Section.Column.text("way"), Section.Column.number("expected"), Section.Column.number("loss"),
                        Section.Column.number("worst 5 %"), Section.Column.number("cash out"),
                        Section.Column.number("hours"), Section.Column.number("days"),
                        Section.Column.number("pay up to")), rows, "", 0);
    }

    private String worth() {
        return "Worth running " + Common.money(appraisal.value().mean()) + " on average, 80 % between "
                + Words.whole(appraisal.value().quantile(0.1)) + " and " + Words.whole(appraisal.value().quantile(0.9))
                + ".";
    }

    private static String plain(Optional<Money> money) {
        return money.map(Words::whole).orElse("\u2013");
    }
}
