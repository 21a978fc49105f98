package worthsaving.teardown;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.Function;
import worthsaving.catalog.AccessStep;
import worthsaving.catalog.Catalogue;
import worthsaving.catalog.FailureItem;
import worthsaving.catalog.Remedy;
import worthsaving.deal.BuyerRule;
import worthsaving.deal.DealCase;
import worthsaving.deal.DealEngine;
import worthsaving.deal.DealTerms;
import worthsaving.deal.Outcome;
import worthsaving.deal.PatternProfit;
import worthsaving.deal.PreparedDeal;
import worthsaving.deal.Repairs;
import worthsaving.deal.Term;
import worthsaving.deal.WayOut;
import worthsaving.diagnosis.FailurePatterns;
import worthsaving.quantity.Hours;
import worthsaving.quantity.Money;
import worthsaving.quantity.Source;
import worthsaving.ranking.JudgeSettings;
import worthsaving.ranking.PreparedListing;
import worthsaving.repair.PatternPlanner;
import worthsaving.repair.RepairPlan;
import worthsaving.repair.RepairPlanner;
import worthsaving.repair.RepairWork;
import worthsaving.repair.Workshop;
import worthsaving.teardown.Prospect.End;

/**
 * A bought car, partly open, and what each end of the job brings from here on in each failure pattern. What was
 * spent counts nowhere. Access that is open costs nothing more, but closing it is due once, however the car is
 * finished.
 */
final class OpenCar {

    /** Likelier than this an item counts as known to have failed. */
    private static final double KNOWN = 0.95;
    /** A unit is thought of when something it mends is at least this likely to have failed. */
    private static final double SUSPECTED = 0.05;

    final Set<String> open;
    final RepairPlanner planner;
    final List<String> items;
    final List<BitSet> patterns;
    final double[] weights;
    /** Probability of each item still to be mended, by id. */
    final Map<String, Double> failed = new TreeMap<>();
    final List<End> stops = new ArrayList<>();
    private final Catalogue catalogue;
    private final Workshop workshop;
    private final DealTerms terms;
    private final BuyerRule rule;
    private final DealCase deal;
    private final double opened;
    private final double closingShare;
    private final double hour;
    private final PreparedDeal finishing;
    private final List<PatternProfit> finished;
    private final List<Optional<RepairWork>> plans;

    OpenCar(Catalogue catalogue, JudgeSettings settings, TeardownTerms teardown, PreparedListing listing,
            Journal journal) {
        this.catalogue = catalogue;
        this.workshop = settings.workshop().withShelf(journal.partsAtHand());
        this.closingShare = teardown.closingShare();
        this.rule = settings.rule();
        this.planner = new RepairPlanner(catalogue, workshop, journal.opened());
        this.open = planner.withRequired(journal.opened());
        this.opened = open.isEmpty() ? 1 : settings.terms().mean(Term.OPENED_UP_SHARE) / 100;
        this.terms = settings.terms().with(Term.ASIS_SHARE, settings.terms().get(Term.ASIS_SHARE).times(opened),
                Source.guess("as it stands, in pieces where it is open"));
        this.hour = workshop.worker().hourly().amount() * terms.mean(Term.SPEED) / 100;
        FailurePatterns left = left(listing.deal().deal().patterns(), journal.mended());
        this.items = left.items();
        this.deal = listing.deal().deal().withMethod(listing.deal().deal().method().committed())
                .bought(left, Repairs.cheapest(planner), opened);
        this.finishing = DealEngine.prepare(deal);
        this.finished = profits(finishing);
        this.patterns = finished.stream().map(PatternProfit::pattern).toList();
        this.weights = finished.stream().mapToDouble(PatternProfit::weight).toArray();
        for (int i = 0; i < items.size(); i++) {
            failed.put(items.get(i), chance(i));
        }
        PatternPlanner works = planner.over(items);
        this.plans = patterns.stream().map(works::work).toList();
        for (WayOut way : List.of(WayOut.SELL_AS_IT_STANDS, WayOut.PART_OUT, WayOut.SCRAP)) {
            String name = way == WayOut.SELL_AS_IT_STANDS && !open.isEmpty() ? "sell it in pieces" : way.label();
            stops.add(End.stop(way.name(), name, finished.get(0).profit()[way.ordinal()], weights.length));
        }
    }

    /** Items that are mended can no longer have failed. */
    private static FailurePatterns left(FailurePatterns all, Set<String> mended) {
        BitSet done = new BitSet();
        for (int i = 0; i < all.items().size(); i++) {
            done.set(i, mended.contains(all.items().get(i)));
        }
        List<BitSet> left = all.patterns().stream().map(p -> {
            BitSet rest = (BitSet) p.clone();
            rest.andNot(done);
            return rest;
        }).toList();
        return new FailurePatterns(all.items(), left, all.weights(), all.enumerated(), all.drawn());
    }

    private double chance(int item) {
        double sum = 0;
        for (int p = 0; p < weights.length; p++) {
            sum += patterns.get(p).get(item) ? weights[p] : 0;
        }
        return sum;
    }

    private List<PatternProfit> profits(PreparedDeal prepared) {
        return prepared.assess(terms, rule, Optional.of(Money.zero(terms.currency()))).patternProfits();
    }

    /** Distribution of what is still to be paid when it is finished by the cheapest plans; empty when none is. */
    Optional<Outcome> costToFinish() {
        return finishing.repairCost(terms);
    }

    /** Closing what is open now. */
    Hours closing() {
        return Hours.of(open.stream().mapToDouble(this::bookHours).sum() * closingShare * terms.mean(Term.SPEED) / 100);
    }

    Money closingCost() {
        return closing().at(workshop.worker().hourly());
    }

    /** Price of opening one more step, and the money of closing it again. */
    double openingPrice(String step) {
        return hoursOf(step) * (1 - closingShare) * hour;
    }

    private double closingPrice(String step) {
        return hoursOf(step) * closingShare * hour;
    }

    private double hoursOf(String step) {
        Hours hours = planner.stillToOpen(Set.of(step)).get(step);
        return hours == null ? 0 : hours.value();
    }

    /** Access steps closed today that reach an item. */
    Set<String> closedBefore(FailureItem item) {
        return new TreeSet<>(planner.stillToOpen(item.access()).keySet());
    }

    private double bookHours(String step) {
        AccessStep found = catalogue.accessById().get(step);
        return found.hours().mean().value() * workshop.worker().factor(step);
    }

    /**
     * Every end of the job.
     *
     * @param steps closed today that may be opened before
     */
    List<End> ends(List<String> steps) {
        List<End> ends = new ArrayList<>(stops);
        ends.add(finish("FINISH", "go on and finish", finished, plans, steps, true));
        for (Remedy unit : catalogue.remedies()) {
            boolean suspected = unit.closes().stream().anyMatch(i -> failed.getOrDefault(i, 0.0) >= SUSPECTED);
            if (unit.wholeUnit() && suspected) {
                UnitSwap swap = new UnitSwap(catalogue, workshop, open, unit);
                if (swap.possible()) {
                    List<PatternProfit> profits = profits(DealEngine.prepare(deal.bought(deal.patterns(), swap, 1)));
                    Function<BitSet, Optional<RepairWork>> works = swap.over(items);
                    ends.add(finish(unit.id(), "fit now, looking no further: " + unit.name(), profits,
                            patterns.stream().map(works).toList(), steps, false));
                }
            }
        }
        return ends;
    }

    /** Probability that the cheapest plan fits a whole unit. */
    double chanceOfUnit() {
        double sum = 0;
        for (int p = 0; p < weights.length; p++) {
            boolean unit = plans.get(p).stream().flatMap(w -> w.jobs().stream()).anyMatch(RepairPlan.Job::wholeUnit);
            sum += unit ? weights[p] : 0;
        }
        return sum;
    }

    private End finish(String id, String name, List<PatternProfit> profits, List<Optional<RepairWork>> works,
            List<String> steps, boolean findsOut) {
        double closing = closingCost().amount();
        double[] money = new double[weights.length];
        double[][] after = new double[weights.length][steps.size()];
        for (int p = 0; p < money.length; p++) {
            Map<String, Double> paid = new TreeMap<>();
            works.get(p).ifPresent(w -> w.access().forEach(
                    s -> paid.put(s.id(), s.hours().mean().value() * workshop.worker().factor(s.id()))));
            money[p] = profits.get(p).profit()[WayOut.REPAIR_AND_SELL.ordinal()];
            if (works.get(p).isPresent()) {
                money[p] -= closing + (findsOut ? findingOut(works.get(p).get(), patterns.get(p), paid) : 0);
            }
            for (int s = 0; s < steps.size(); s++) {
                Double hours = paid.get(steps.get(s));
                after[p][s] = hours == null ? -closingPrice(steps.get(s))
                        : Math.min(openingPrice(steps.get(s)), hours * (1 - closingShare) * hour);
            }
        }
        return new End(Move.Kind.FINISH, id, name, money, after);
    }

    /**
     * Who goes on without knowing finds out that a unit is needed by opening what it mends: the least opening
     * that shows one of those items.
     */
    private double findingOut(RepairWork work, BitSet pattern, Map<String, Double> paid) {
        double sum = 0;
        for (RepairPlan.Job job : work.jobs()) {
            if (job.wholeUnit()) {
                OptionalDouble least = pattern.stream()
                        .mapToObj(items::get)
                        .filter(job.closes()::contains)
                        .mapToDouble(i -> failed.get(i) > KNOWN ? 0 : closedBefore(catalogue.itemsById().get(i)).stream()
                                .filter(s -> !paid.containsKey(s)).mapToDouble(this::openingPrice).sum())
                        .min();
                sum += least.orElse(0);
            }
        }
        return sum;
    }

    Money perHour() {
        return new Money(hour, terms.currency());
    }
}
