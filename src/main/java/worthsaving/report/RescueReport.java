package worthsaving.report;

import java.io.IOException;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import worthsaving.deal.CashLine;
import worthsaving.deal.KeeperOption;
import worthsaving.deal.KeeperPlan;
import worthsaving.deal.Scenario;
import worthsaving.quantity.Money;
import worthsaving.ranking.RemainingLife;
import worthsaving.ranking.Rescue;

/** An owner's ways to go on having a car, side by side. */
public final class RescueReport implements Exported {

    private static final int LEFT_SHOWN = 8;
    private static final int VERSION = 1;

    private final Rescue rescue;
    private final VinGuard vin;

    public RescueReport(Rescue rescue) {
        this(rescue, VinGuard.HIDDEN);
    }

    /** With or without the vehicle identification number in an id. */
    public RescueReport(Rescue rescue, VinGuard vin) {
        this.vin = vin;
        this.rescue = rescue;
    }

    @Override
    public void markdown(Appendable out) throws IOException {
        Prose.document(out, vin.text(heading()), this::body);
    }

    /** For people. */
    public void text(Appendable out) throws IOException {
        Prose prose = Prose.plain(out);
        prose.say(heading());
        body(prose);
    }

    private String heading() {
        return rescue.appraisal().listing().id() + ": " + rescue.appraisal().listing().vehicle().label() + ", kept "
                + rescue.plan().months() / 12 + " years and " + Words.whole(rescue.plan().distance().miles()) + " miles; "
                + rescue.valueMended().currency().getCurrencyCode();
    }

    private void body(Prose out) throws IOException {
        KeeperPlan plan = rescue.plan();
        if (rescue.hardStop().isPresent()) {
            out.say("STOP: " + rescue.hardStop().get() + " Settle that first; the sums below leave it out.");
        }
        out.say("Cheapest: " + plan.cheapest().name() + ", by " + Words.whole(rescue.margin()) + ".");
        TextTable table = new TextTable().left("way").right("now").right("again").right("later repairs")
                .right("running").right("worth at the end").right("net").right("per year").right("cents per mile");
        for (KeeperOption o : plan.options()) {
            table.row(o.name(), Words.whole(o.upfrontTotal()), Words.whole(expectedRepeat(o)),
                    Words.whole(o.otherRepairs()), Words.whole(running(o)), Words.whole(o.endValue()),
                    Words.whole(o.netCost()), Words.whole(plan.perYear(o)),
                    String.format(Locale.ROOT, "%.2f", 100 * plan.perMile(o).amount()));
        }
        out.table(table);
        for (KeeperOption o : plan.options()) {
            StringBuilder line = new StringBuilder("  " + o.name() + ", now:");
            for (CashLine l : o.upfront()) {
                line.append(' ').append(l.name()).append(' ').append(Words.whole(l.amount())).append(';');
            }
            o.repeat().ifPresent(r -> line.append(" again with ").append(Words.percent(r.chance().value()))
                    .append(" at ").append(Words.whole(r.cost())).append("; dearer than replacing by that alone: ")
                    .append(Words.percent(plan.chanceDearer(o, rescue.replace()))).append(';'));
            out.say(line.substring(0, line.length() - 1) + ".");
        }
        out.say("Break-even quote against replacing: " + never(rescue.breakEvenQuote())
                + "; against the cheapest other"
                + " way: " + never(rescue.breakEvenAgainstBest())
                + rescue.quote().map(q -> "; quoted " + Words.whole(q)).orElse("; no quote given") + ".");
        out.say("Selling it as it stands brings about " + Words.whole(rescue.asItStands())
                + "; that is counted as given up by every way that keeps it.");
        left(out);
        out.title("Assumed:");
        for (Rescue.Assumption a : rescue.assumptions()) {
            out.point(a.text() + " (" + a.label().name().toLowerCase(Locale.ROOT).replace('_', ' ') + ")");
        }
    }

    private void left(Prose out) throws IOException {
        List<RemainingLife> left = rescue.left();
        if (left.isEmpty()) {
            return;
        }
        out.title("What else may come up meanwhile, sound now (chances from wear, a guess)");
        TextTable table = new TextTable().left("item", 60).right("chance").right("half fail in").right("alone, at a shop")
                .right("expected");
        for (RemainingLife l : left.subList(0, Math.min(LEFT_SHOWN, left.size()))) {
            table.row(l.item().name(), Words.percent(l.chance().value()),
                    l.yearsUntilHalf().isPresent()
                            ? String.format(Locale.ROOT, "%.0f years", l.yearsUntilHalf().getAsDouble()) : "not known",
                    Words.whole(l.cost()), Words.whole(l.expected()));
        }
        out.table(table);
        out.say("All items together " + Words.whole(rescue.expectedMeanwhile()) + ", each mended alone; the sums above"
                + " reckon with " + Words.whole(rescue.plan().options().get(0).otherRepairs()) + " of later repairs.");
    }

    private static String never(Money quote) {
        return quote.amount() > 0 ? Words.whole(quote) : "none, not even a free repair would pay";
    }

    @Override
    public void rows(RowWriter.Maker form) throws IOException {
        RowWriter rows = null;
        for (KeeperOption o : rescue.plan().options()) {
            Map<String, Object> f = fields(o);
            if (rows == null) {
                rows = form.of(f.keySet().toArray(String[]::new));
            }
            rows.row(f.values().toArray());
        }
    }

    @Override
    public void json(Appendable out) throws IOException {
        JsonReport json = new JsonReport(out, "worthsaving/rescue", VERSION)
                .field("id", vin.text(rescue.appraisal().listing().id()))
                .field("months", rescue.plan().months())
                .field("miles", rescue.plan().distance().miles())
                .field("quote", rescue.quote().map(RescueReport::cents).orElse(null))
                .field("break_even_quote", cents(rescue.breakEvenQuote()))
                .field("break_even_quote_against_best", cents(rescue.breakEvenAgainstBest()))
                .field("as_it_stands", cents(rescue.asItStands()))
                .field("hard_stop", rescue.hardStop().orElse(null))
                .field("cheapest", rescue.plan().cheapest().name());
        json.beginList("ways");
        for (KeeperOption o : rescue.plan().options()) {
            json.element(fields(o));
        }
        json.endList().beginList("remaining_life");
        for (RemainingLife l : rescue.left()) {
            Map<String, Object> f = new LinkedHashMap<>();
            f.put("item", l.item().id());
            f.put("chance", l.chance().value());
            f.put("years_until_half", l.yearsUntilHalf().isPresent() ? l.yearsUntilHalf().getAsDouble() : null);
            f.put("cost", cents(l.cost()));
            json.element(f);
        }
        json.endList().beginList("assumptions");
        for (Rescue.Assumption a : rescue.assumptions()) {
            json.element(Map.of("text", a.text(), "label", a.label().name().toLowerCase(Locale.ROOT)));
        }
        json.endList().end();
    }

    private Map<String, Object> fields(KeeperOption o) {
        Map<String, Object> f = new LinkedHashMap<>();
        f.put("way", o.name());
        f.put("upfront", cents(o.upfrontTotal()));
        f.put("expected_repeat", cents(expectedRepeat(o)));
        f.put("other_repairs", cents(o.otherRepairs()));
        f.put("running", cents(running(o)));
        f.put("end_value", cents(o.endValue()));
        f.put("net_cost", cents(o.netCost()));
        f.put("per_year", cents(rescue.plan().perYear(o)));
        f.put("per_mile", rescue.plan().perMile(o).amount());
        f.put("chance_dearer_than_replacing", rescue.plan().chanceDearer(o, rescue.replace()));
        return f;
    }

    private static Money expectedRepeat(KeeperOption o) {
        return o.repeat().map(Scenario.Repeat::expected).orElse(Money.zero(o.endValue().currency()));
    }

    private static Money running(KeeperOption o) {
        return o.running().stream().map(CashLine::amount).reduce(Money.zero(o.endValue().currency()), Money::plus);
    }

    private static double cents(Money money) {
        return Math.round(money.amount() * 100) / 100.0;
    }
}
