package worthsaving.report.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import worthsaving.catalog.Catalogue;
import worthsaving.deal.CashLine;
import worthsaving.deal.KeeperOption;
import worthsaving.deal.KeeperPlan;
import worthsaving.deal.Scenario;
import worthsaving.quantity.Money;
import worthsaving.ranking.Rescue;
import worthsaving.report.Words;

/** The sheet for a car's owner: rescue it, pay the quote, or replace it, over the years and miles wanted. */
public final class OwnerSheet {

    private final Rescue rescue;
    private final KeeperPlan plan;
    private final KeeperOption best;
    private final Common common;

    private OwnerSheet(Rescue rescue, Catalogue catalogue, SheetSettings settings) {
        this.rescue = rescue;
        this.plan = rescue.plan();
        this.best = plan.cheapest();
        this.common = new Common(rescue.appraisal(), catalogue, settings);
    }

    public static DecisionSheet of(Rescue rescue, Catalogue catalogue, SheetSettings settings) {
        return new OwnerSheet(rescue, catalogue, settings).sheet();
    }

    private DecisionSheet sheet() {
        boolean replace = best.equals(rescue.replace());
        boolean quoted = best.name().equals("pay the quote");
        boolean stop = rescue.hardStop().isPresent();
        String verdict = stop ? "stop" : replace ? "replace it" : quoted ? "pay the quote" : "rescue it";
        return new DecisionSheet(Audience.OWNER, common.title(), common.facts(),
                stop || replace ? Tone.STOP : Tone.GO, verdict,
                rescue.hardStop().map(OwnerSheet::first).orElse("Cheapest over " + plan.months() / 12 + " years and "
                        + Words.whole(plan.distance().miles()) + " miles: " + best.name() + ", " + Common.money(rescue.margin())
                        + " below the next way."),
                figures(), Section.Lines.of("Because", Section.Importance.DECIDES, because()), chart(),
                List.of(ways(), common.broken(Section.Importance.SUPPORTS), common.plan()),
                common.cautions(List.of()), common.guesses(assumptions()), List.of(), List.of(),
                common.provenance());
    }

    private static String first(String stop) {
        return "Settle this before anything else: " + stop;
    }

    private List<DecisionSheet.Figure> figures() {
        return List.of(
                new DecisionSheet.Figure("quoted", rescue.quote().map(Words::whole).orElse("\u2013")),
                new DecisionSheet.Figure("most a quote may be against replacing", never(rescue.breakEvenQuote())),
                new DecisionSheet.Figure("most a quote may be against the cheapest other way",
                        never(rescue.breakEvenAgainstBest())),
                new DecisionSheet.Figure("as it stands", Words.whole(rescue.asItStands())),
                new DecisionSheet.Figure("worth mended", Words.whole(rescue.valueMended())),
                new DecisionSheet.Figure("a year, the cheapest way", Words.whole(plan.perYear(best))));
    }

    private static String never(Money quote) {
        return quote.amount() > 0 ? Words.whole(quote) : "none";
    }

    private List<String> because() {
        List<String> because = new ArrayList<>();
        KeeperOption replace = rescue.replace();
        for (KeeperOption o : plan.options()) {
            if (!o.equals(best)) {
                because.add(Common.capital(o.name()) + ": " + Words.whole(plan.saving(best, o)) + " more than "
                        + best.name() + ".");
            }
        }
        best.repeat().filter(r -> r.chance().value() > 0).ifPresent(r -> because.add(
                Words.percent(r.chance().value()) + " chance that it must be done again, at " + Words.whole(r.cost())
                        + "; dearer than replacing by that alone: "
                        + Words.percent(plan.chanceDearer(best, replace)) + "."));
        because.add("Keeping the car gives up the " + Words.whole(rescue.asItStands())
                + " that it brings as it stands; every way that keeps it bears that.");
        if (rescue.quote().isEmpty()) {
            because.add("No quote was given: with one, compare it with the two limits above.");
        } else if (rescue.breakEvenQuote().amount() <= 0) {
            because.add("Not even a free repair by the quote would be cheaper than replacing the car.");
        }
        return because;
    }

    private SheetChart chart() {
        return new SheetChart.Bars("Net cost over " + plan.months() / 12 + " years, "
                + rescue.valueMended().currency().getCurrencyCode(), plan.options().stream()
                .map(o -> new SheetChart.Bar(o.name(), o.netCost().amount(), o.equals(best)))
                .toList());
    }

    private Section.Table ways() {
        List<List<String>> rows = plan.options().stream()
                .map(o -> List.of(o.name(), Words.whole(o.upfrontTotal()), Words.whole(again(o)),
                        Words.whole(o.otherRepairs()), Words.whole(running(o)),
                        Words.whole(o.endValue()), Words.whole(o.netCost()), Words.whole(plan.perYear(o)),
                        String.format(Locale.ROOT, "%.1f", 100 * plan.perMile(o).amount())))
                .toList();
        return new Section.Table("Ways to go on having a car", Section.Importance.DECIDES,
                List.of(Section.Column.text("way"), Section.Column.number("now"), Section.Column.number("done again"),
                        Section.Column.number("later repairs"), Section.Column.number("running"),
                        Section.Column.number("worth at the end"), Section.Column.number("net cost"),
                        Section.Column.number("a year"), Section.Column.number("cents a mile")), rows, "", 0);
    }

    private static Money again(KeeperOption o) {
        return o.repeat().map(Scenario.Repeat::expected).orElse(zero(o));
    }

    private static Money running(KeeperOption o) {
        return o.running().stream().map(CashLine::amount).reduce(zero(o), Money::plus);
    }

    private static Money zero(KeeperOption o) {
        return Money.zero(o.endValue().currency());
    }

    private List<String> assumptions() {
        return rescue.assumptions().stream().map(a -> Common.capital(a.text()) + " ("
                + a.label().name().toLowerCase(Locale.ROOT).replace('_', ' ') + ").").toList();
    }
}
