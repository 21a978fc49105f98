package worthsaving.ranking;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import worthsaving.catalog.Catalogue;
import worthsaving.catalog.Onset;
import worthsaving.deal.CashLine;
import worthsaving.deal.KeeperGuesses;
import worthsaving.deal.KeeperOption;
import worthsaving.deal.KeeperPlan;
import worthsaving.deal.RulesOfThumb;
import worthsaving.deal.Scenario;
import worthsaving.deal.Term;
import worthsaving.diagnosis.FailureNetwork;
import worthsaving.diagnosis.FailurePatterns;
import worthsaving.quantity.Distance;
import worthsaving.quantity.Money;
import worthsaving.quantity.Probability;
import worthsaving.quantity.Source.Label;
import worthsaving.ranking.Rescue.Assumption;
import worthsaving.repair.RepairPlan;
import worthsaving.repair.RepairPlanner;
import worthsaving.repair.Worker;
import worthsaving.repair.Workshop;
import worthsaving.vehicle.Listing;
import worthsaving.vehicle.Vehicle;

/**
 * Compares an owner's ways to go on having a car. Every running car has the faults usual at its age, the
 * yearly repairs are for those, and a mended car keeps them; so a repair planned here costs what mending
 * everything takes beyond them. The buyer of a replacement does not know which they are and pays for a share
 * of them on top.
 */
public final class Rescuer {

    private static final double MOST_UNMENDABLE = 0.01;
    private static final double OFTEN_ENOUGH = 0.1;

    private final Catalogue catalogue;
    private final ValueSource values;
    private final JudgeSettings settings;
    private final Workshop shop;
    private final RepairPlanner shopPlanner;
    private final RepairPlanner ownPlanner;
    private final UsualFaults usualAtShop;
    private final UsualFaults usualOwn;

    public Rescuer(Catalogue catalogue, ValueSource values, JudgeSettings settings) {
        this.catalogue = catalogue;
        this.values = values;
        this.settings = settings;
        this.shop = settings.workshop().withWorker(
                new Worker.Shop(Worker.Shop.Kind.INDEPENDENT, settings.terms().money(Term.SHOP_HOURLY)));
        this.shopPlanner = new RepairPlanner(catalogue, shop);
        this.ownPlanner = new RepairPlanner(catalogue, settings.workshop());
        this.usualAtShop = new UsualFaults(catalogue, shopPlanner, settings.patterns());
        this.usualOwn = new UsualFaults(catalogue, ownPlanner, settings.patterns());
    }

    private Money shopHour() {
        return new Money(settings.terms().get(Term.SHOP_HOURLY).mode(), settings.terms().currency());
    }

    /** @param appraisal of the owner's car, judged with the same settings */
    public Rescue compare(Appraisal appraisal, RescueTerms terms) {
        Listing listing = appraisal.listing();
        int months = 12 * terms.years();
        List<Assumption> said = new ArrayList<>();
        Money value = appraisal.value().mean();
        Money scrap = settings.terms().money(Term.JUNK_WHOLE);
        Money asItStands = terms.asItStands().orElseGet(() -> guessAsItStands(value, scrap, said));
        double age = ageYears(listing.vehicle(), listing);
        Money later = KeeperGuesses.otherRepairs(age, months, shopHour());
        said.add(new Assumption("unplanned repairs over the years: " + whole(later) + " for a car of this age, "
                + whole(KeeperGuesses.otherRepairs(age, 12, shopHour())) + " in the first year", Label.GUESS));
        Money end = valueAfter(listing.vehicle(), listing, terms, scrap);
        said.add(new Assumption("worth " + whole(value) + " mended and " + whole(end) + " at the end: the price model's"
                + " value of a like car " + terms.years() + " years older, with the miles driven, at today's prices",
                Label.MEASURED));
        FailurePatterns patterns = appraisal.diagnosis().patterns(settings.patterns());
        Set<String> likely = appraisal.likelyPlan().map(RepairPlan::failed).orElse(Set.of());
        FailureNetwork network = appraisal.diagnosis().network();
        RepairForecast byShop = RepairForecast.of(patterns, shopPlanner, shop);
        Money usual = usualAtShop.of(network);
        Kept kept = new Kept(asItStands, later, end);
        KeeperOption quoted = quoted(terms, beyond(byShop.cost(), usual), kept);
        List<KeeperOption> options = new ArrayList<>();
        terms.quote().ifPresent(q -> {
            options.add(quoted);
            said.add(new Assumption("the quote mends all that goes beyond the faults usual at its age", Label.GUESS));
            said.add(new Assumption(percent(terms.quoteAgain().value()) + " chance that the quoted repair must be done"
                    + " again, at what an independent shop takes", Label.GUESS));
            said.addAll(ofQuotes(q, value));
        });
        options.add(planned("independent shop", beyond(byShop.cost(), usual), shopPlanner.find(likely).found(), kept));
        noUsedUnit(patterns, byShop, network, likely, kept).ifPresent(options::add);
        if (settings.workshop().worker() instanceof Worker.OwnHands) {
            options.add(planned("own hands", beyond(RepairForecast.of(patterns, ownPlanner, settings.workshop()).cost(),
                    usualOwn.of(network)), appraisal.likelyPlan(), kept));
        }
        said.add(new Assumption("repairs not quoted: mean over all that may have failed, beyond the faults usual at"
                + " its age (" + whole(usual) + " at a shop), used units where they are cheapest, "
                + settings.terms().money(Term.SHOP_HOURLY) + " an hour at the shop and "
                + settings.workshop().worker().hourly() + " for an own hour", Label.GUESS));
        if (byShop.unmendable() > MOST_UNMENDABLE) {
            said.add(new Assumption(percent(byShop.unmendable()) + " of the cases cannot be mended by anything allowed"
                    + " and are left out of the means", Label.GUESS));
        }
        KeeperOption replace = replacement(appraisal, terms, usual, scrap, said);
        options.add(replace);
        KeeperPlan plan = new KeeperPlan(months, Distance.ofMiles(terms.years() * terms.milesPerYear()), options);
        Money quote = terms.quote().orElse(Money.zero(value.currency()));
        KeeperOption best = options.stream().filter(o -> o != quoted)
                .min(Comparator.comparing(KeeperOption::netCost)).orElseThrow();
        return new Rescue(appraisal, plan, replace, terms.quote(), plan.breakEvenQuote(quoted, quote, replace),
                plan.breakEvenQuote(quoted, quote, best), asItStands, value,
                RemainingLife.of(appraisal, likely, new Holding(terms.years(), terms.milesPerYear()),
                        catalogue.itemsById(), shopPlanner), said);
    }

    /** What the trade says of quotes; nothing here is in the sums. */
    private List<Assumption> ofQuotes(Money quote, Money value) {
        double margin = catalogue.moneyById().get("single_quote_margin").figure().mode() / 100;
        double alarm = catalogue.moneyById().get("keeper_alarm").figure().mode() / 100;
        return List.of(
                new Assumption("not in the sums: a single quote is apt to grow, by " + percent(margin) + " to "
                        + whole(quote.times(1 + margin)), Label.COMMON_PRACTICE),
                new Assumption("not in the sums: a rule of thumb scraps above " + percent(alarm) + " of the value mended;"
                        + " this quote is " + percent(quote.amount() / value.amount())
                        + (RulesOfThumb.repairExceeds(quote, alarm, value) ? ", so it would scrap" : ", so it would mend"),
                        Label.COMMON_PRACTICE));
    }

    private Money guessAsItStands(Money value, Money scrap, List<Assumption> said) {
        double share = settings.terms().mean(Term.ASIS_SHARE) / 100;
        Money guess = value.times(share);
        Money most = guess.compareTo(scrap) > 0 ? guess : scrap;
        said.add(new Assumption("fetches " + whole(most) + " as it stands: " + percent(share)
                + " of its value mended, and no less than a junk yard pays", Label.GUESS));
        return most;
    }

    /** What all ways that keep the car have in common. */
    private record Kept(Money asItStands, Money later, Money end) {}

    private static KeeperOption quoted(RescueTerms terms, Money byShop, Kept kept) {
        Money quote = terms.quote().orElse(Money.zero(kept.end().currency()));
        return KeeperOption.repair("pay the quote", quote, kept.asItStands(),
                new Scenario.Repeat(terms.quoteAgain(), byShop), kept.later(), kept.end());
    }

    /** @param cost with the reserve for jobs of {@code plan} done again, which is shown apart */
    private static KeeperOption planned(String name, Money cost, Optional<RepairPlan> plan, Kept kept) {
        Scenario.Repeat again = plan.map(Rescuer::again)
                .filter(r -> r.expected().compareTo(cost) <= 0)
                .orElse(new Scenario.Repeat(Probability.NEVER, Money.zero(cost.currency())));
        return KeeperOption.repair(
                name, cost.minus(again.expected()), kept.asItStands(), again, kept.later(), kept.end());
    }

    /** Chance that at least one of its jobs must be done again, and what that then costs on average. */
    private static Scenario.Repeat again(RepairPlan plan) {
        double never = 1;
        for (RepairPlan.Job job : plan.jobs()) {
            never *= job.success().value() * (1 - job.comeback().value());
        }
        return never < 1
                ? new Scenario.Repeat(Probability.of(1 - never), plan.comebackReserve().times(1 / (1 - never)))
                : new Scenario.Repeat(Probability.NEVER, Money.zero(plan.meanCost().currency()));
    }

    private static Money beyond(Money all, Money usual) {
        return all.compareTo(usual) > 0 ? all.minus(usual) : Money.zero(all.currency());
    }

    /** Only where used units would be fitted at all. */
    private Optional<KeeperOption> noUsedUnit(FailurePatterns patterns, RepairForecast byShop, FailureNetwork network,
            Set<String> likely, Kept kept) {
        if (!shop.usedUnits() || byShop.wholeUnit() < OFTEN_ENOUGH) {
            return Optional.empty();
        }
        Workshop without = shop.withUsedUnits(false);
        RepairPlanner planner = new RepairPlanner(catalogue, without);
        Money usual = new UsualFaults(catalogue, planner, settings.patterns()).of(network);
        return Optional.of(planned("independent shop, no used unit",
                beyond(RepairForecast.of(patterns, planner, without).cost(), usual), planner.find(likely).found(),
                        kept));
    }

    private KeeperOption replacement(Appraisal appraisal, RescueTerms terms, Money usual, Money scrap,
            List<Assumption> said) {
        Listing listing = appraisal.listing();
        Money zero = Money.zero(usual.currency());
        RescueTerms.Other other = terms.other()
                .orElse(new RescueTerms.Other(listing.vehicle(), appraisal.value().mean(), zero));
        boolean like = terms.other().isEmpty();
        double age = ageYears(other.vehicle(), listing);
        Money faults = like ? usual : usualAtShop.of(FailureNetwork.of(
                catalogue, other.vehicle(), listing.exposure(), listing.seen()));
        Money unknown = faults.times(terms.unknownFaults().value());
        said.add(new Assumption("the replacement costs " + whole(other.price()) + " before tax"
                + (like ? ", the value of a like running car" : ""), like ? Label.MEASURED : Label.USER));
        said.add(new Assumption("its unknown faults: " + percent(terms.unknownFaults().value())
                + " of those usual at its age (" + whole(faults) + " at a shop) are soon mended on top of the yearly"
                + " repairs", Label.GUESS));
        if (like) {
            said.add(new Assumption("insurance and fuel are the same for both cars", Label.GUESS));
        }
        double now = values.forecast(other.vehicle(), listing.seen()).mean().amount();
        Money end = other.price().times(valueAfter(other.vehicle(), listing, terms, zero).amount() / now);
        KeeperOption option = KeeperOption.replace(
                like ? "sell as it stands, buy a like car" : "sell as it stands, buy the other car",
                other.price(), settings.terms(), KeeperGuesses.otherRepairs(age, 12 * terms.years(), shopHour()),
                List.of(new CashLine("insurance and fuel", other.runningPerYear().times(terms.years()))),
                end.compareTo(scrap) > 0 ? end : scrap);
        said.add(new Assumption(String.format(Locale.ROOT, "tax on the replacement %.2f %%", settings.terms()
                .mean(Term.SALES_TAX)), settings.terms().sources().get(Term.SALES_TAX).label()));
        return option.withUpfront(new CashLine("unknown faults", unknown));
    }

    /** Value of the car once it is so much older and driven so far, on the market of today. */
    private Money valueAfter(Vehicle vehicle, Listing listing, RescueTerms terms, Money least) {
        double miles = terms.years() * terms.milesPerYear();
        Vehicle aged = vehicle.toBuilder()
                .year(vehicle.year().map(y -> y - terms.years()))
                .odometer(vehicle.odometer().map(d -> Distance.ofMiles(d.miles() + miles)))
                .build();
        Money value = values.forecast(aged, listing.seen()).mean();
        return value.compareTo(least) > 0 ? value : least;
    }

    private static double ageYears(Vehicle vehicle, Listing listing) {
        return vehicle.ageYears(listing.seen()).orElseGet(() -> vehicle.odometer().orElse(Distance.ofMiles(0)).miles()
                / Onset.MILES_PER_YEAR);
    }

    private static String whole(Money money) {
        return String.format(Locale.ROOT, "%,d", Math.round(money.amount()));
    }

    private static String percent(double share) {
        return String.format(Locale.ROOT, "%.0f %%", 100 * share);
    }
}
