package worthsaving.report.sheet;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import worthsaving.catalog.Catalogue;
import worthsaving.quantity.Range;
import worthsaving.ranking.Appraisal;
import worthsaving.ranking.ShopQuote;
import worthsaving.repair.Quote;
import worthsaving.report.Words;

/** A workshop's quote on one page: range, ceiling, when to call the owner, cautions. */
public final class WorkshopSheet {

    private static final double WORTH_SAYING = 0.05;

    private final ShopQuote work;
    private final Common common;

    private WorkshopSheet(Appraisal appraisal, ShopQuote work, Catalogue catalogue, SheetSettings settings) {
        this.work = work;
        this.common = new Common(appraisal, catalogue, settings);
    }

    /** @param work quoted for the car of the appraisal */
    public static DecisionSheet of(
            Appraisal appraisal, ShopQuote work, Catalogue catalogue, SheetSettings settings) {
        return new WorkshopSheet(appraisal, work, catalogue, settings).sheet();
    }

    private DecisionSheet sheet() {
        return new DecisionSheet(Audience.WORKSHOP, common.title(), common.facts(), Tone.PLAIN, "quote",
                "Agree a ceiling of " + Common.money(work.ceiling()) + " in writing; the work comes to "
                        + Words.whole(work.price().mean()) + " on average.",
                figures(), Section.Lines.of("Call the owner and wait for a yes", Section.Importance.DECIDES, calls()),
                chart(), List.of(assumed(), lines(), callPoints()), cautions(),
                common.guesses(List.of()), List.of(), List.of(), common.provenance());
    }

    private List<DecisionSheet.Figure> figures() {
        return List.of(
                new DecisionSheet.Figure("ceiling", Words.whole(work.ceiling())),
                new DecisionSheet.Figure("chance it is not enough", Words.percent(work.chanceAbove(work.ceiling()))),
                new DecisionSheet.Figure("not over, with 80 %", Words.whole(work.notExceeded(0.8))),
                new DecisionSheet.Figure("not over, with 95 %", Words.whole(work.notExceeded(0.95))),
                new DecisionSheet.Figure("the work below, average", Words.whole(work.quote().mean())),
                new DecisionSheet.Figure("its hours", Words.hours(work.quote().hours().value())),
                new DecisionSheet.Figure("an hour", Words.whole(work.quote().hourly())));
    }

    private List<String> calls() {
        List<String> calls = new ArrayList<>(List.of(
                "Before opening up: that costs about " + Words.whole(work.openingUp())
                        + " even if the answer is then no, and the car fetches about " + Words.whole(work.stopValue())
                        + " in pieces (guesses).",
                "Before any part is ordered, once it is open, when one of the findings below is met.",
                "Whenever the work would pass " + Common.money(work.ceiling())
                        + "; local rules on estimates and authorisation come first."));
        if (work.quote().hoursSaved().value() >= WORTH_SAYING) {
            calls.add("Jobs done together save " + Words.hours(work.quote().hoursSaved().value()) + " hours.");
        }
        return calls;
    }

    private SheetChart chart() {
        return SheetChart.Spread.of("Price, whatever the complaint turns out to be; dark: over the ceiling",
                work.price(), work.ceiling().amount(), false, List.of(
                        new SheetChart.Mark("average", work.price().mean()),
                        new SheetChart.Mark("ceiling", work.ceiling().amount())));
    }

    private Section.Lines assumed() {
        return Section.Lines.of("Taken for failed, until it is open", Section.Importance.DECIDES, work.assumed());
    }

    /** Dearest first, so that what a full page leaves out is small. */
    private Section.Table lines() {
        List<List<String>> rows = work.quote().lines().stream()
                .sorted(Comparator.comparing((Quote.Line l) -> l.amount().mean()).reversed())
                .map(line -> List.of(line.name(), line.stage().name().toLowerCase(Locale.ROOT),
                        line.hours().high() == 0 ? "" : hours(line.hours()), Words.range(line.amount().amount())))
                .toList();
        String stages = Stream.of(Quote.Stage.values())
                .filter(stage -> work.quote().total(stage).amount().high() > 0)
                .map(stage -> stage.name().toLowerCase(Locale.ROOT) + " "
                        + Words.range(work.quote().total(stage).amount()))
                .collect(Collectors.joining("; "));
        return new Section.Table("The work", Section.Importance.DECIDES,
                List.of(Section.Column.text("for"), Section.Column.text("stage"), Section.Column.number("hours"),
                        Section.Column.number("amount")), rows,
                "By stage: " + stages + "; together " + Words.range(work.quote().total().amount()) + ", "
                        + Words.whole(work.quote().mean()) + " on average.", 0);
    }

    private static String hours(Range range) {
        return range.width() == 0 ? Words.hours(range.low())
                : Words.hours(range.low()) + " to " + Words.hours(range.high());
    }

    private Section.Table callPoints() {
        List<List<String>> rows = work.calls().stream()
                .map(c -> List.of(c.name(), c.sound() ? "is sound" : "failed too", Words.percent(c.chance()),
                        Words.whole(c.change()), Words.whole(c.price()),
                        c.price().compareTo(work.ceiling()) > 0 ? "over the ceiling" : ""))
                .toList();
        return new Section.Table("What would change the price", Section.Importance.DECIDES,
                List.of(Section.Column.text("found"), Section.Column.text(""), Section.Column.number("chance"),
                        Section.Column.number("change"), Section.Column.number("price then"),
                        Section.Column.text("")), rows,
                rows.isEmpty() ? "Nothing likely changes it by much." : "", 0);
    }

    private Section.Lines cautions() {
        Section.Lines usual = common.cautions(List.of());
        List<String> all = Stream.concat(usual.lines().stream(), work.cautions().stream().map(c -> c + "."))
                .distinct().toList();
        return Section.Lines.of(usual.heading(), usual.importance(), all);
    }
}
