package worthsaving.desktop.teardown;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import worthsaving.desktop.Figures;
import worthsaving.desktop.Texts;
import worthsaving.quantity.Money;
import worthsaving.ranking.ShopQuote;
import worthsaving.teardown.Advice;
import worthsaving.teardown.Move;
import worthsaving.teardown.OwnerJob;

/** What the reckoning says, in sentences. */
final class AdviceWords {

    private AdviceWords() {}

    /** On one line with its sign. */
    static String percent(double chance) {
        return Figures.percent(chance).replace(' ', '\u00a0');
    }

    /** The name of a move, as the beginning of a sentence. */
    static String name(Move move) {
        return move.name().isEmpty() ? "" : move.name().substring(0, 1).toUpperCase(Locale.ROOT) + move.name().substring(1);
    }

    static String headline(Advice advice) {
        Move best = advice.best();
        String worth = Figures.money(best.worth());
        return switch (best.kind()) {
            case STOP -> Texts.of("teardown.headline.stop", best.name(), worth);
            case FINISH -> Texts.of("teardown.headline.finish", best.name(), worth);
            case LOOK -> Texts.of("teardown.headline.look", best.name(), Figures.money(best.cost()), worth);
        };
    }

    static String result(Move.Result result) {
        return Texts.of("teardown.result", percent(result.chance()), result.name(), result.then().name(),
                Figures.money(result.then().worth()));
    }

    /** Such as "If the crankshaft is found failed (12 %), stop: ...". */
    static String rule(Advice.Rule rule) {
        String found = Texts.of(rule.finding() ? "teardown.rule.finding" : "teardown.rule.item", rule.name());
        boolean stop = rule.then() == Move.Kind.STOP;
        return Texts.of(stop ? "teardown.rule.stop" : "teardown.rule.go_on", found, percent(rule.chance()),
                Figures.money(rule.goOn()), Figures.money(rule.stop()));
    }

    /** Whether the answer without looking any further is to stop. */
    static boolean wouldStop(Advice advice) {
        return ends(advice).stream().findFirst().map(c -> c.move().kind() == Move.Kind.STOP).orElse(false);
    }

    /** Ways to end the job, best first. */
    static List<Advice.Choice> ends(Advice advice) {
        return advice.options().stream().filter(c -> c.move().kind() != Move.Kind.LOOK).toList();
    }

    /** What could be looked at, best first. */
    static List<Advice.Choice> looks(Advice advice) {
        return advice.options().stream().filter(c -> c.move().kind() == Move.Kind.LOOK).toList();
    }

    static String order(Advice.SearchOrder order) {
        String sum = Texts.of(order.exact() ? "teardown.order.sum" : "teardown.order.sum.some",
                Figures.number(order.expectedHours(), 1));
        return order.plainHours().isEmpty() ? sum
                : sum + " " + Texts.of("teardown.order.plain", Figures.number(order.plainHours().getAsDouble(), 1));
    }

    static String bill(OwnerJob job, Optional<ShopQuote> quote) {
        String so = Texts.of("teardown.owner.billed", Figures.money(job.billed()), Figures.amount(job.labour().amount()),
                Figures.amount(job.receipts().amount()));
        if (job.left().isPresent()) {
            Money left = job.left().get();
            return so + " " + (left.amount() > 0
                    ? Texts.of("teardown.owner.left", Figures.money(job.agreed().orElseThrow()), Figures.money(left))
                    : Texts.of("teardown.owner.passed", Figures.money(job.agreed().orElseThrow()),
                            Figures.money(left.times(-1))));
        }
        return quote.map(q -> so + " " + Texts.of("teardown.owner.agree", Figures.money(q.ceiling()),
                Figures.money(job.billed().plus(q.ceiling())))).orElse(so);
    }

    static String rest(ShopQuote quote) {
        return Texts.of("teardown.owner.rest", Figures.amount(quote.price().mean()),
                Figures.money(quote.notExceeded(.95)), percent(quote.chanceAbove(quote.ceiling())),
                Figures.money(quote.ceiling()));
    }

    static String call(ShopQuote.CallPoint call, ShopQuote quote) {
        String change = (call.change().amount() < 0 ? "" : "+") + Figures.amount(call.change().amount());
        String line = Texts.of(call.sound() ? "teardown.owner.call.sound" : "teardown.owner.call.failed", call.name(),
                percent(call.chance()), change, Figures.money(call.price()));
        return call.price().compareTo(quote.ceiling()) > 0 ? line + Texts.of("teardown.owner.call.over") : line;
    }
}
