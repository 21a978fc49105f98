package worthsaving.report;

import java.io.IOException;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import worthsaving.deal.Outcome;
import worthsaving.ranking.ShopQuote;
import worthsaving.teardown.Advice;
import worthsaving.teardown.Advice.Choice;
import worthsaving.teardown.Advice.Rule;
import worthsaving.teardown.Move;
import worthsaving.teardown.Opening;
import worthsaving.teardown.OwnerJob;

/** Go on or stop, printed. */
public final class TeardownReport implements Report {

    private static final int VERSION = 1;
    private static final int OPTIONS_SHOWN = 8;
    private static final int PLACES_SHOWN = 10;
    private static final int RESULTS_SHOWN = 4;
    private static final String CAUTION = "Stands on rated points, fuel pressure relieved, battery off where airbags or"
            + " high voltage are near; trained persons only on high voltage. Local rules come first.";

    private final String car;
    private final Advice advice;
    private final Optional<ShopQuote> quote;
    private final OwnerJob job;

    /**
     * @param quote for what is left to do, at a workshop's rate; empty when nothing is suspected any more
     * @param job what is on the owner's bill
     */
    public TeardownReport(String car, Advice advice, Optional<ShopQuote> quote, OwnerJob job) {
        this.car = car;
        this.advice = advice;
        this.quote = quote;
        this.job = job;
    }

    @Override
    public void text(Appendable out) throws IOException {
        say(out, car);
        say(out, "Spent so far, not counted: " + Words.whole(advice.spent().receipts()) + " in receipts and "
                + Words.hours(advice.spent().hours().value()) + " hours, " + Words.whole(advice.spent().total())
                + " together. It is gone whatever is done next.");
        if (!advice.openings().isEmpty()) {
            openings(out);
        }
        title(out, headline());
        plan(out, advice.best(), "  ");
        options(out);
        cost(out);
        rules(out);
        order(out);
        calls(out);
        cautions(out);
    }

    private String headline() {
        Move best = advice.best();
        String worth = "; worth " + Words.whole(best.worth()) + " from here on.";
        return switch (best.kind()) {
            case STOP -> "STOP: " + best.name() + worth;
            case FINISH -> "GO ON: " + best.name() + worth;
            case LOOK -> "LOOK FIRST, " + Words.whole(best.cost()) + ": " + best.name() + worth;
        };
    }

    private static void plan(Appendable out, Move move, String indent) throws IOException {
        for (Move.Result result : move.results().stream().limit(RESULTS_SHOWN).toList()) {
            Move then = result.then();
            say(out, indent + Words.percent(result.chance()) + " " + result.name() + ": then " + then.name() + " ("
                    + Words.whole(then.worth()) + ")");
        }
        double rest = move.results().stream().skip(RESULTS_SHOWN).mapToDouble(Move.Result::chance).sum();
        if (rest > 0) {
            say(out, indent + Words.percent(rest) + " something rarer");
        }
    }

    private void options(Appendable out) throws IOException {
        title(out, "What can be done now, best first (money from here on)");
        TextTable table = new TextTable().left("first", 90).right("costs").right("worth").right("may change the answer");
        for (Choice c : advice.options().stream().limit(OPTIONS_SHOWN).toList()) {
            boolean look = c.move().kind() == Move.Kind.LOOK;
            table.row(c.move().name(), look ? Words.whole(c.move().cost()) : "", Words.whole(c.move().worth()),
                    look ? Words.percent(c.chanceOfChange()) : "");
        }
        table.write(out);
        if (!advice.exact()) {
            say(out, "Not every opening was weighed with every other: the ones worth most by themselves were.");
        }
    }

    private void cost(Appendable out) throws IOException {
        title(out, "To finish");
        if (advice.costToFinish().isEmpty()) {
            say(out, "Nothing that is allowed mends it.");
            return;
        }
        Outcome cost = advice.costToFinish().get();
        say(out, Words.whole(cost.mean()) + " on average, hours at their worth; 80 % between "
                + Words.whole(cost.quantile(.1)) + " and " + Words.whole(cost.quantile(.9)) + ". What is open is not"
                + " paid again; closing it takes " + Words.hours(advice.closing().value()) + " hours of it (a guess).");
        say(out, Words.percent(advice.chanceOfUnit()) + " chance that a whole unit is the cheapest remedy; "
                + Words.percent(advice.chanceStopIsBetter())
                + " that finishing brings less, in the end, than stopping now.");
    }

    private void rules(Appendable out) throws IOException {
        title(out, advice.stops() || stopsWithoutLooking() ? "Would go on after all" : "Stop if this is found");
        if (advice.rules().isEmpty()) {
            say(out, "Nothing that may still be found changes the answer by itself.");
            return;
        }
        TextTable table = new TextTable().left("found", 64).right("chance").right("finish").right("stop");
        for (Rule r : advice.rules()) {
            table.row(r.name(), Words.percent(r.chance()), Words.whole(r.goOn()), Words.whole(r.stop()));
        }
        table.write(out);
    }

    private boolean stopsWithoutLooking() {
        return advice.options().stream().filter(c -> c.move().kind() != Move.Kind.LOOK).findFirst()
                .map(c -> c.move().kind() == Move.Kind.STOP).orElse(false);
    }

    private void order(Appendable out) throws IOException {
        if (advice.order().places().isEmpty()) {
            return;
        }
        title(out, "Look in this order, if one of them is behind it");
        TextTable table = new TextTable().left("item", 64).right("chance").right("hours to see it then");
        advice.order().places().stream().limit(PLACES_SHOWN).forEach(p -> table.row(
                p.name(), Words.percent(p.chance()), Words.hours(p.hours())));
        table.write(out);
        say(out, Words.hours(advice.order().expectedHours()) + " hours expected, each opening counted once"
                + (advice.order().exact() ? "" : " (the likeliest in their best order)") + "; "
                + Words.hours(advice.order().plainHours().orElse(0)) + " by plain likelihood.");
    }

    private void openings(Appendable out) throws IOException {
        title(out, "How far it is open");
        TextTable table = new TextTable().left("step", 64).left("").right("opening it").right("hours there and back");
        for (Opening o : advice.openings()) {
            table.row(o.name(), o.open() ? "open" : o.next() ? "next" : "behind others",
                    o.open() ? "" : Words.whole(o.cost()), o.open() ? "" : Words.hours(o.hours().value()));
        }
        table.write(out);
    }

    private void calls(Appendable out) throws IOException {
        if (quote.isPresent()) {
            out.append('\n');
            new OwnerSection(quote.get(), job).text(out);
        }
    }

    private void cautions(Appendable out) throws IOException {
        title(out, "Cautions");
        for (String caution : advice.cautions()) {
            say(out, "- " + caution);
        }
        say(out, "- " + CAUTION);
    }

    @Override
    public void csv(Appendable out) throws IOException {
        CsvWriter csv = new CsvWriter(out, "kind", "id", "name", "cost", "worth", "chance_of_change");
        for (Choice c : advice.options()) {
            csv.row(kind(c.move()), c.move().id(), c.move().name(), c.move().cost().amount(),
                    c.move().worth().amount(), c.chanceOfChange());
        }
    }

    @Override
    public void json(Appendable out) throws IOException {
        Advice.Spent spent = advice.spent();
        JsonReport json = new JsonReport(out, "worthsaving/teardown", VERSION)
                .field("car", car)
                .field("spent_not_counted", spent.total().amount())
                .field("spent", Map.of("receipts", spent.receipts().amount(), "hours", spent.hours().value()))
                .field("now", kind(advice.best()))
                .field("what", advice.best().name())
                .field("worth", advice.best().worth().amount())
                .field("exact", advice.exact())
                .field("cost_to_finish", advice.costToFinish().map(Outcome::mean).orElse(null))
                .field("cost_to_finish_80", advice.costToFinish()
                        .map(c -> List.of(c.quantile(.1), c.quantile(.9))).orElse(null))
                .field("closing_hours", advice.closing().value())
                .field("chance_of_unit", advice.chanceOfUnit())
                .field("chance_stop_is_better", advice.chanceStopIsBetter());
        json.beginList("options");
        for (Choice c : advice.options()) {
            json.element(Map.of("kind", kind(c.move()), "id", c.move().id(), "name", c.move().name(), "cost",
                    c.move().cost().amount(), "worth", c.move().worth().amount(), "chance_of_change",
                    c.chanceOfChange()));
        }
        json.endList().beginList("rules");
        for (Rule r : advice.rules()) {
            json.element(Map.of("id", r.id(), "name", r.name(), "chance", r.chance(), "then",
                    r.then().name().toLowerCase(Locale.ROOT), "finish", r.goOn().amount(), "stop", r.stop().amount()));
        }
        json.endList().beginList("order");
        for (Advice.Place p : advice.order().places()) {
            json.element(Map.of("item", p.item(), "chance", p.chance(), "hours", p.hours()));
        }
        json.endList().beginList("openings");
        for (Opening o : advice.openings()) {
            json.element(Map.of("step", o.id(), "open", o.open(), "next", o.next(), "hours", o.hours().value(), "cost",
                    o.cost().amount(), "shows", o.shows().stream().map(Opening.Suspect::item).toList()));
        }
        json.endList();
        if (quote.isPresent()) {
            json.field("owner", new OwnerSection(quote.get(), job).fields());
        }
        json.field("cautions", List.copyOf(advice.cautions())).end();
    }

    private static String kind(Move move) {
        return move.kind().name().toLowerCase(Locale.ROOT);
    }

    private static void title(Appendable out, String text) throws IOException {
        out.append('\n');
        say(out, text);
    }

    private static void say(Appendable out, String text) throws IOException {
        out.append(TextTable.plain(text)).append('\n');
    }
}
