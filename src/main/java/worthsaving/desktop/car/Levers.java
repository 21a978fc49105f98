package worthsaving.desktop.car;

import java.util.Currency;
import java.util.Optional;
import worthsaving.catalog.Catalogue;
import worthsaving.deal.BuyerRule;
import worthsaving.deal.Term;
import worthsaving.quantity.Money;
import worthsaving.quantity.Probability;
import worthsaving.quantity.Source;
import worthsaving.ranking.JudgeSettings;
import worthsaving.ranking.ValueSource;
import worthsaving.repair.Worker;
import worthsaving.vehicle.Listing;

/** What the levers of a scenario do to the settings, the catalogue and the values. */
final class Levers {

    private static final double WHOLE = 100;

    private final JudgeSettings usual;
    private final Currency currency;

    Levers(JudgeSettings usual) {
        this.usual = usual;
        this.currency = usual.terms().currency();
    }

    Currency currency() {
        return currency;
    }

    /** Where a lever stands when it has not been moved; zero for the price of a listing without an ask. */
    double given(Lever lever, Listing listing) {
        return switch (lever) {
            case PRICE -> listing.ask().get().map(Money::amount).orElse(0.0);
            case TARGET -> usual.rule().targetProfit().amount();
            case LOSS -> WHOLE * usual.rule().mostChanceOfLoss().value();
            case DAYS -> usual.terms().get(Term.DAYS_TO_SELL).mode();
            case HOURLY -> usual.workshop().worker().hourly().amount();
            case SPEED -> WHOLE * (usual.workshop().worker() instanceof Worker.OwnHands own ? own.speed() : 1);
            case VALUE, PARTS -> WHOLE;
        };
    }

    /** Where it stands, moved or not. */
    double value(Lever lever, Scenario scenario) {
        return scenario.lever(lever).orElse(given(lever, scenario.listing()));
    }

    /** Settings for a scenario; the same as the usual ones when no lever was moved. */
    JudgeSettings settings(Scenario scenario) {
        JudgeSettings settings = usual;
        if (moved(scenario, Lever.HOURLY)) {
            double hourly = value(Lever.HOURLY, scenario);
            settings = settings.withHourly(new Money(hourly, currency))
                    .withTerms(settings.terms().with(Term.OWN_HOURLY, hourly));
        }
        if (moved(scenario, Lever.SPEED)
                && settings.workshop().worker() instanceof Worker.OwnHands own) {
            settings = settings.withWorkshop(settings.workshop().withWorker(new Worker.OwnHands(
                    own.hourly(), value(Lever.SPEED, scenario) / WHOLE, own.firstTime(), own.done())));
        }
        if (moved(scenario, Lever.DAYS)) {
            double factor = value(Lever.DAYS, scenario) / given(Lever.DAYS, scenario.listing());
            settings = settings.withTerms(settings.terms().with(
                    Term.DAYS_TO_SELL, settings.terms().get(Term.DAYS_TO_SELL).times(factor), Source.user()));
        }
        return settings.withRule(rule(scenario));
    }

    /** The price that is judged: where the lever stands, else the ask. */
    Optional<Money> price(Scenario scenario) {
        return scenario.lever(Lever.PRICE).map(p -> new Money(p, currency)).or(() -> scenario.listing().ask().get());
    }

    Catalogue catalogue(Catalogue catalogue, Scenario scenario) {
        return moved(scenario, Lever.PARTS)
                ? catalogue.withPartPrices(value(Lever.PARTS, scenario) / WHOLE)
                : catalogue;
    }

    ValueSource values(ValueSource values, Scenario scenario) {
        return moved(scenario, Lever.VALUE) ? values.times(value(Lever.VALUE, scenario) / WHOLE) : values;
    }

    private BuyerRule rule(Scenario scenario) {
        BuyerRule rule = usual.rule();
        return new BuyerRule(new Money(value(Lever.TARGET, scenario), currency),
                Probability.of(value(Lever.LOSS, scenario) / WHOLE), rule.leastPerHour(), rule.ways(),
                rule.hardStopAbove(), rule.reviewAbove(), rule.openingShare());
    }

    private static boolean moved(Scenario scenario, Lever lever) {
        return scenario.lever(lever).isPresent();
    }
}
