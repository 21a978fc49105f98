package worthsaving.desktop.car;

import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import worthsaving.catalog.Catalogue;
import worthsaving.deal.Assessment;
import worthsaving.deal.BuyerRule;
import worthsaving.deal.CashLine;
import worthsaving.deal.DealTerms;
import worthsaving.deal.ItemEffect;
import worthsaving.deal.Term;
import worthsaving.deal.WayOut;
import worthsaving.deal.WayResult;
import worthsaving.desktop.Figures;
import worthsaving.desktop.Texts;
import worthsaving.desktop.car.Why.Lines;
import worthsaving.desktop.car.Why.Topic;
import worthsaving.quantity.Money;
import worthsaving.quantity.Source;
import worthsaving.quantity.Source.Label;

/** Says of each key figure how it comes about. */
public final class Whys {

    private static final int ITEMS = 3;
    private static final Map<String, List<Term>> TERMS_OF_LINE = Map.of(
            "selling", List.of(Term.DETAILING, Term.LISTING_FEE, Term.EMISSIONS_INSPECTION),
            "tow", List.of(Term.TOW_HOOK_UP, Term.TOW_PER_MILE),
            "title", List.of(Term.TITLE_TRANSFER, Term.TITLE_HISTORY),
            "inspection before buying", List.of(Term.INSPECTION_PAID),
            "holding", List.of(Term.HOLDING_PER_DAY_OWN),
            "capital", List.of(Term.CAPITAL_RATE),
            "comeback reserve", List.of(Term.COMEBACK_RESERVE));

    private final WhySources sources;

    Whys(Catalogue catalogue) {
        this.sources = new WhySources(catalogue);
    }

    /** @param id of the item for {@link Topic#ITEM}; else anything */
    public Why of(Topic topic, String id, CarPicture.Seen seen) {
        return switch (topic) {
            case MOST -> most(seen);
            case OPENING -> opening(seen);
            case PROFIT -> profit(seen);
            case LOSS, BAD -> risk(topic, seen);
            case DAYS -> days(seen);
            case HOURS -> sources.hours(seen);
            case VALUE -> sources.value(seen);
            case ITEM -> sources.item(id, seen);
            case COST -> sources.cost(seen);
            case CHECK -> sources.check(seen);
        };
    }

    private static Why most(CarPicture.Seen seen) {
        Assessment a = seen.appraisal().assessment();
        BuyerRule rule = a.rule();
        Lines lines = new Lines()
                .line(Texts.of("why.most.target"), Figures.money(rule.targetProfit()), Label.USER)
                .line(Texts.of("why.most.risk"), Figures.percent(rule.mostChanceOfLoss().value()), Label.USER);
        for (WayResult way : a.ways()) {
            if (way.way() != WayOut.WALK_AWAY) {
                lines.line(Texts.of("why.most.way", way.way().label()),
                        way.wholeLimit().map(Figures::money).orElse(Texts.of("why.most.none")));
            }
        }
        lines.say(Texts.of("why.most.best", a.mostToPay().way().label(),
                Texts.of("why.binding", a.mostToPay().binding())));
        a.mostToPay().breakEven().ifPresent(m -> lines.line(Texts.of("why.most.even"), Figures.money(m)));
        return lines.say(Texts.of("why.method", Integer.toString(a.method().points())))
                .under(Texts.of("why.title.most", a.mostToPay().wholeLimit().map(Figures::money)
                        .orElse(Texts.of("why.most.none"))));
    }

    private static Why opening(CarPicture.Seen seen) {
        Assessment a = seen.appraisal().assessment();
        return new Lines()
                .line(Texts.of("car.figure.most"), a.mostToPay().wholeLimit().map(Figures::money).orElse(Texts.of("none")))
                .line(Texts.of("car.figure.ask"), a.ask().map(Figures::money).orElse(Texts.of("none")))
                .line(Texts.of("why.opening.share"), Figures.percent(a.rule().openingShare()), Label.COMMON_PRACTICE)
                .under(Texts.of("why.title.opening", a.mostToPay().opening().map(Figures::money)
                        .orElse(Texts.of("none"))));
    }

    private static Why profit(CarPicture.Seen seen) {
        Assessment a = seen.appraisal().assessment();
        WayResult way = a.way(seen.shown());
        Lines lines = new Lines();
        if (seen.shown() == WayOut.REPAIR_AND_SELL) {
            ledger(lines, seen, a.terms(), way);
        } else {
            double cash = way.cashOut().mean();
            lines.line(Texts.of("why.profit.back"), money(way.expectedProfit() + cash, a))
                    .line(Texts.of("ways.cash"), money(-cash, a));
        }
        return lines.say(Texts.of("why.method", Integer.toString(a.method().points())))
                .under(Texts.of("why.title.profit", seen.shown().label(), money(way.expectedProfit(), a)));
    }

    /** The lines at their means; what their interplay adds is named, so that they add up to the figure shown. */
    private static void ledger(Lines lines, CarPicture.Seen seen, DealTerms terms, WayResult way) {
        Assessment a = seen.appraisal().assessment();
        var deal = seen.nearby().deal(seen.scenario());
        Money value = seen.appraisal().value().mean();
        double sum = value.amount();
        lines.line(Texts.of("why.profit.value"), money(sum, a), Label.MEASURED);
        double spared = terms.mean(Term.USUAL_FAULTS_SHARE) / 100 * deal.deal().usualFaults().amount();
        lines.line(Texts.of("why.profit.usual"), money(spared, a), label(terms, List.of(Term.USUAL_FAULTS_SHARE)));
        sum += spared;
        for (CashLine line : terms.ledger(value, deal.deal().towMiles(), way.days().mean(), a.price()).lines()) {
            lines.line(line.name(), money(-line.amount().amount(), a),
                    label(terms, TERMS_OF_LINE.getOrDefault(line.name(), List.of())));
            sum -= line.amount().amount();
        }
        double price = terms.priceTerms().costOf(a.price()).amount();
        lines.line(Texts.of("why.profit.price"), money(-price, a), label(terms, List.of(Term.SALES_TAX)));
        double repair = deal.repairCost(terms).map(c -> c.mean()).orElse(0.0);
        lines.line(Texts.of("why.profit.repair"), money(-repair, a), Label.GUESS);
        lines.line(Texts.of("why.profit.rest", Figures.percent(a.chanceOfStopping())),
                money(way.expectedProfit() - (sum - price - repair), a));
    }

    private static Why risk(Topic topic, CarPicture.Seen seen) {
        Assessment a = seen.appraisal().assessment();
        WayResult way = a.way(seen.shown());
        Lines lines = new Lines()
                .line(Texts.of("why.loss.outcomes"), Integer.toString(way.profit().size()))
                .line(Texts.of("car.figure.loss"), Figures.percent(way.chanceOfLoss()))
                .line(Texts.of("ways.low"), money(way.profit().quantile(0.1), a))
                .line(Texts.of("why.loss.middle"), money(way.profit().quantile(0.5), a))
                .line(Texts.of("ways.high"), money(way.profit().quantile(0.9), a))
                .line(Texts.of("ways.bad"), money(way.meanOfWorstTwentieth(), a));
        a.effects().stream().filter(e -> e.weight() > 0).limit(ITEMS).forEach(e -> lines.say(effect(e, a)));
        lines.say(Texts.of("why.loss.spread", Figures.money(seen.appraisal().value().quantile(0.1)),
                Figures.money(seen.appraisal().value().quantile(0.9))));
        return lines.under(Texts.of(topic == Topic.LOSS ? "why.title.loss" : "why.title.bad", seen.shown().label(),
                topic == Topic.LOSS ? Figures.percent(way.chanceOfLoss()) : money(way.meanOfWorstTwentieth(), a)));
    }

    private static String effect(ItemEffect e, Assessment a) {
        return Texts.of("why.loss.item", e.name(), Figures.percent(e.probability()), money(e.profitIfFailed(), a),
                Double.isNaN(e.profitIfSound()) ? Texts.of("none") : money(e.profitIfSound(), a));
    }

    private static Why days(CarPicture.Seen seen) {
        Assessment a = seen.appraisal().assessment();
        WayResult way = a.way(seen.shown());
        Lines lines = new Lines();
        for (Term term : List.of(Term.DAYS_IN_YARD, Term.DAYS_WAITING, Term.DAYS_TO_SELL)) {
            lines.line(term.label(), Figures.days(a.terms().mean(term)), label(a.terms(), List.of(term)));
        }
        lines.line(Texts.of("why.days.work", Figures.hours(way.ownHours().value()),
                Figures.number(a.terms().mean(Term.WORK_PER_DAY), 1)), "",
                label(a.terms(), List.of(Term.WORK_PER_DAY)));
        return lines.under(Texts.of("why.title.days", seen.shown().label(), Figures.days(way.days().mean())));
    }

    /** The weakest label among the figures that make up a line. */
    static Label label(DealTerms terms, List<Term> all) {
        return Stream.of(Label.GUESS, Label.USER, Label.COMMON_PRACTICE, Label.PUBLISHED)
                .filter(l -> all.stream().map(t -> terms.sources().get(t)).map(Source::label).anyMatch(l::equals))
                .findFirst().orElse(Label.COMMON_PRACTICE);
    }

    private static String money(double amount, Assessment a) {
        return Figures.money(new Money(amount, a.price().currency()));
    }
}
