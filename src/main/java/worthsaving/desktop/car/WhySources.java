package worthsaving.desktop.car;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import worthsaving.catalog.Catalogue;
import worthsaving.catalog.FailureItem;
import worthsaving.catalog.Remedy;
import worthsaving.deal.Assessment;
import worthsaving.deal.Term;
import worthsaving.deal.WayResult;
import worthsaving.desktop.Figures;
import worthsaving.desktop.Texts;
import worthsaving.desktop.car.CarPicture.Item;
import worthsaving.desktop.car.CarPicture.Pull;
import worthsaving.desktop.car.Why.Lines;
import worthsaving.inspection.CheckValue;
import worthsaving.quantity.Source;
import worthsaving.quantity.Source.Label;
import worthsaving.repair.Quote;
import worthsaving.repair.Quote.Line;
import worthsaving.repair.Quote.Stage;
import worthsaving.valuation.ValueForecast;

/** Says of figures that come from data or catalogue what they rest on. */
final class WhySources {

    private static final int CONTRIBUTIONS = 5;

    private final Map<String, FailureItem> items;
    private final Catalogue catalogue;

    WhySources(Catalogue catalogue) {
        this.catalogue = catalogue;
        this.items = catalogue.itemsById();
    }

    Why value(CarPicture.Seen seen) {
        ValueForecast value = seen.appraisal().value();
        Lines lines = new Lines();
        boolean first = true;
        for (ValueForecast.Step step : value.steps()) {
            lines.line(step.name() + ": " + step.why(),
                    first ? Figures.money(value.base()) : "\u00d7 " + Figures.number(step.factor(), 3));
            first = false;
        }
        value.contributions().stream()
                .sorted((a, b) -> Double.compare(Math.abs(b.money().amount()), Math.abs(a.money().amount())))
                .limit(CONTRIBUTIONS)
                .forEach(c -> lines.line(Texts.of("why.value.feature", c.feature(), c.value()),
                        Figures.money(c.money()), Label.MEASURED));
        value.warnings().forEach(lines::say);
        return lines.say(Texts.of("value.model", value.modelName()))
                .say(Texts.of("value.interval", Figures.money(value.quantile(0.1)), Figures.money(value.quantile(0.9))))
                .under(Texts.of("why.title.value", Figures.money(value.mean())));
    }

    Why item(String id, CarPicture.Seen seen) {
        Item item = seen.items().stream().filter(i -> i.id().equals(id)).findFirst()
                .orElseThrow(() -> new IllegalArgumentException("no such item is shown: " + id));
        FailureItem known = items.get(id);
        Lines lines = new Lines();
        if (item.yours()) {
            lines.line(Texts.of("why.item.yours"), Figures.percent(item.now()), Label.USER);
        }
        lines.line(Texts.of("why.item.before"), Figures.percent(item.before()), known.source().label())
                .say(Texts.of("why.item.source"), known.source())
                .say(Texts.of("why.item.doubt", Figures.number(known.onsetDoubt().low(), 1),
                        Figures.number(known.onsetDoubt().high(), 1)));
        for (Pull pull : item.pulls()) {
            String said = Texts.of(pull.seller() ? "pull.seller" : "pull.seen", Texts.of("pull", pull.seen()));
            lines.line(Texts.of("pull.line", Pulls.arrow(pull.logRatio()), Texts.of(Pulls.key(pull.logRatio())),
                    pull.finding(), said), Texts.of("why.item.times", Pulls.times(pull.logRatio())));
        }
        if (item.pulls().isEmpty()) {
            lines.say(Texts.of("items.no_pull"));
        }
        return lines.under(Texts.of("why.title.item", item.name(), Figures.percent(item.now())));
    }

    Why cost(CarPicture.Seen seen) {
        Lines lines = new Lines();
        Optional<Quote> quote = seen.quote();
        quote.ifPresent(q -> {
            for (Line line : q.lines()) {
                lines.line(Texts.of("why.stage", line.stage()) + ": " + line.name(), Figures.money(line.amount()),
                        source(line).label());
            }
            lines.line(Texts.of("why.cost.hour"), Figures.money(q.hourly()), Label.USER);
        });
        lines.say(Texts.of("why.cost.guess"));
        return lines.under(Texts.of("why.title.cost",
                quote.map(q -> Figures.money(q.mean())).orElse(Texts.of("none"))));
    }

    private Source source(Line line) {
        return switch (line.stage()) {
            case ACCESS -> Optional.ofNullable(catalogue.accessById().get(line.id())).map(s -> s.source())
                    .orElse(Source.guess(""));
            case TOOL -> Optional.ofNullable(catalogue.toolsById().get(line.id())).map(t -> t.source())
                    .orElse(Source.guess(""));
            case JOB, PART, CONSUMABLES -> catalogue.remedies().stream().filter(r -> r.id().equals(line.id()))
                    .map(Remedy::source).findFirst()
                    .or(() -> Optional.ofNullable(items.get(line.id())).map(FailureItem::source))
                    .orElse(Source.guess(""));
        };
    }

    Why hours(CarPicture.Seen seen) {
        Assessment a = seen.appraisal().assessment();
        WayResult way = a.way(seen.shown());
        Lines lines = new Lines().say(Texts.of("why.hours.average"));
        seen.quote().ifPresent(q -> {
            lines.line(Texts.of("why.hours.likely"), Figures.hours(q.hours().value()));
            q.lines().stream().filter(l -> l.stage() == Stage.ACCESS || l.stage() == Stage.JOB)
                    .forEach(l -> lines.line(Texts.of("why.stage", l.stage()) + ": " + l.name(),
                            Figures.hours(l.hours().mean()), source(l).label()));
            lines.line(Texts.of("why.hours.saved"), Figures.hours(q.hoursSaved().value()));
        });
        lines.line(Term.SPEED.label(), Texts.of("matters.percent", Figures.number(a.terms().mean(Term.SPEED), 0)),
                Whys.label(a.terms(), List.of(Term.SPEED)));
        return lines.under(Texts.of("why.title.hours", seen.shown().label(),
                Figures.hours(way.ownHours().value())));
    }

    Why check(CarPicture.Seen seen) {
        Optional<CheckValue> next = seen.appraisal().nextCheck();
        if (next.isEmpty()) {
            return new Lines().say(Texts.of("checks.none")).under(Texts.of("why.title.no_check"));
        }
        CheckValue c = next.get();
        return new Lines()
                .line(Texts.of("checks.explain.chance"), Figures.percent(c.chancePresent().value()))
                .line(Texts.of("checks.explain.if_yes"), Figures.money(c.profitIfPresent()))
                .line(Texts.of("checks.explain.if_no"), Figures.money(c.profitIfAbsent()))
                .line(Texts.of("why.check.gross"), Figures.money(c.gross()))
                .line(Texts.of("checks.explain.cost"), Figures.money(c.cost()), c.finding().source().label())
                .line(Texts.of("checks.explain.net"), Figures.money(c.net()))
                .say(Texts.of("why.item.source"), c.finding().source())
                .under(Texts.of("why.title.check", c.finding().name(), Figures.money(c.net())));
    }
}
