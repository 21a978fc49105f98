package worthsaving.desktop.car;

import java.util.HashMap;
import java.util.Map;
import worthsaving.deal.DealTerms;
import worthsaving.deal.PreparedDeal;
import worthsaving.deal.Term;
import worthsaving.deal.WayOut;
import worthsaving.quantity.Money;
import worthsaving.ranking.Appraisal;
import worthsaving.ranking.Judge;
import worthsaving.ranking.JudgeSettings;
import worthsaving.ranking.PreparedListing;

/**
 * A car prepared with the levers at one place, and judged with them at others while jobs and parts stay as they
 * were chosen there. Exact for the levers that are quick; for the others near enough while they are dragged.
 * Safe to share between threads.
 */
public final class Nearby {

    /** Points of the rough one: an eighth of the usual, so that a slider answers at once. */
    private static final int ROUGH_POINTS = 512;

    private final Judge judge;
    private final PreparedListing listing;
    private final Scenario at;
    private final Levers levers;
    /** Serves the next price with all other levers as they were. */
    private volatile Moved last;

    /** @param at where the levers stood that are not quick */
    Nearby(Judge judge, PreparedListing listing, Scenario at, Levers levers) {
        this.judge = judge;
        this.listing = listing;
        this.at = at;
        this.levers = levers;
    }

    /** The same at fewer points. */
    Nearby rough() {
        return new Nearby(judge, listing.with(listing.deal().coarse(ROUGH_POINTS)), at, levers);
    }

    private record Moved(Map<Dial, Double> dials, PreparedListing listing, JudgeSettings settings) {}

    Appraisal appraise(Scenario scenario) {
        Moved moved = moved(scenario);
        return moved.listing().appraise(moved.settings().terms(), moved.settings().rule(), levers.price(scenario));
    }

    /** Expected profit of one way out at the scenario's price, or at another one when it has none. */
    double profit(Scenario scenario, WayOut way, Money otherwise) {
        Moved moved = moved(scenario);
        return moved.listing().deal().expectedProfit(moved.settings().terms(), way,
                levers.price(scenario).orElse(otherwise));
    }

    PreparedDeal deal(Scenario scenario) {
        return moved(scenario).listing().deal();
    }

    DealTerms terms(Scenario scenario) {
        return moved(scenario).settings().terms();
    }

    private Moved moved(Scenario scenario) {
        Map<Dial, Double> dials = new HashMap<>(scenario.levers());
        dials.remove(Lever.PRICE);
        Moved now = last;
        if (now == null || !now.dials().equals(dials)) {
            now = new Moved(dials, listing(scenario), settings(scenario));
            last = now;
        }
        return now;
    }

    private PreparedListing listing(Scenario scenario) {
        PreparedListing believed = judge.believing(listing, scenario.chances());
        PreparedDeal deal = believed.deal();
        double value = ratio(Lever.VALUE, scenario);
        if (value != 1) {
            deal = deal.withValueTimes(value);
        }
        if (ratio(Lever.HOURLY, scenario) != 1) {
            deal = deal.withHourly(new Money(levers.value(Lever.HOURLY, scenario), levers.currency()));
        }
        return deal == believed.deal() ? believed : believed.with(deal);
    }

    private JudgeSettings settings(Scenario scenario) {
        JudgeSettings settings = levers.settings(scenario);
        DealTerms terms = times(settings.terms(), Term.SPEED, ratio(Lever.SPEED, scenario));
        return settings.withTerms(times(terms, Term.PARTS_PRICE, ratio(Lever.PARTS, scenario)));
    }

    private static DealTerms times(DealTerms terms, Term term, double factor) {
        return factor == 1 ? terms : terms.with(term, terms.get(term).times(factor), terms.sources().get(term));
    }

    private double ratio(Lever lever, Scenario scenario) {
        double now = levers.value(lever, scenario);
        double then = levers.value(lever, at);
        return now == then ? 1 : now / then;
    }
}
