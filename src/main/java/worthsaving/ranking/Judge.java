package worthsaving.ranking;

import java.util.ArrayList;
import java.util.Currency;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.ToDoubleFunction;
import java.util.stream.Collectors;
import worthsaving.catalog.Catalogue;
import worthsaving.catalog.FailureItem;
import worthsaving.deal.DealCase;
import worthsaving.deal.DealEngine;
import worthsaving.deal.Labour;
import worthsaving.deal.PreparedDeal;
import worthsaving.deal.Repairs;
import worthsaving.diagnosis.Belief;
import worthsaving.diagnosis.Diagnosis;
import worthsaving.diagnosis.FailureNetwork;
import worthsaving.diagnosis.Outcome;
import worthsaving.diagnosis.Witnesses;
import worthsaving.inspection.LookAhead;
import worthsaving.inspection.NextChecks;
import worthsaving.quantity.Money;
import worthsaving.repair.PlanResult;
import worthsaving.repair.Preventive;
import worthsaving.repair.RepairPlan;
import worthsaving.repair.RepairPlanner;
import worthsaving.repair.SourceOffer;
import worthsaving.repair.Worker;
import worthsaving.valuation.ValueForecast;
import worthsaving.vehicle.Listing;

/**
 * From a listing to a judgement: value, failed items, repair, deal and next check. Safe to share between
 * threads; one listing's numbers never depend on the others.
 */
public final class Judge {

    private final Catalogue catalogue;
    private final ValueSource values;
    private final JudgeSettings settings;
    private final Witnesses witnesses;
    private final NextChecks checks;
    private final UsualFaults usualFaults;
    private final RepairPlanner planner;
    private final Map<String, FailureItem> items;

    public Judge(Catalogue catalogue, ValueSource values, JudgeSettings settings) {
        this.catalogue = Objects.requireNonNull(catalogue, "catalogue");
        this.values = Objects.requireNonNull(values, "values");
        this.settings = Objects.requireNonNull(settings, "settings");
        this.witnesses = new Witnesses(catalogue, settings.trust());
        this.checks = new NextChecks(catalogue, settings.checks());
        this.planner = new RepairPlanner(catalogue, settings.workshop());
        this.items = catalogue.itemsById();
        this.usualFaults = new UsualFaults(catalogue, planner, settings.patterns());
    }

    private Judge(Judge like, ValueSource values) {
        this.catalogue = like.catalogue;
        this.values = Objects.requireNonNull(values, "values");
        this.settings = like.settings;
        this.witnesses = like.witnesses;
        this.checks = like.checks;
        this.planner = like.planner;
        this.items = like.items;
        this.usualFaults = like.usualFaults;
    }

    /** The same judge with another source of values; repair plans already found are kept. */
    public Judge with(ValueSource other) {
        return new Judge(this, other);
    }

    public JudgeSettings settings() {
        return settings;
    }

    public Judged judge(Listing listing) {
        Preparation preparation = prepare(listing);
        if (preparation instanceof Preparation.Ready ready) {
            return new Judged.Done(
                    ready.listing().appraise(settings.terms(), settings.rule(), listing.ask().get()));
        }
        return ((Preparation.Refused) preparation).why();
    }

    /** All of judging that neither the price, nor the buyer's rule, nor the money lines change. */
    public Preparation prepare(Listing listing) {
        Optional<Judged.Refused> refusal = refusal(listing);
        if (refusal.isPresent()) {
            return new Preparation.Refused(refusal.get());
        }
        FailureNetwork network = FailureNetwork.of(catalogue, listing.vehicle(), listing.exposure(), listing.seen(),
                witnesses.unmentioned(listing));
        Outcome outcome = network.attempt(witnesses.evidence(listing.observations()));
        if (outcome instanceof Outcome.Impossible impossible) {
            return new Preparation.Refused(new Judged.Refused(listing,
                    "these findings cannot all be true: " + String.join(", ", impossible.conflicting()),
                    "look again at one of them, or enter it as unsure"));
        }
        return new Preparation.Ready(prepared(listing, ((Outcome.Explained) outcome).diagnosis()));
    }

    /**
     * The same listing for a user who knows better how likely some items have failed.
     *
     * @param prepared by this judge
     * @param chances by item id, each from 0 to 1; see {@link worthsaving.deal.PreparedDeal#withChances}
     */
    public PreparedListing believing(PreparedListing prepared, Map<String, Double> chances) {
        if (chances.isEmpty()) {
            return prepared;
        }
        PreparedDeal deal = prepared.deal().withChances(chances);
        return prepared.with(deal, likelyPlan(prepared.diagnosis().network().items(), deal::chance));
    }

    /**
     * Sound items that the likely repair lays open, and whether renewing them now pays; none without such a
     * repair.
     *
     * @param appraisal of this judge
     */
    public List<Preventive> whileInThere(Appraisal appraisal, Holding holding) {
        return appraisal.likelyPlan()
                .map(plan -> planner.whileInThere(
                        plan, holding.needed(catalogue, appraisal.listing(), appraisal.diagnosis())))
                .orElse(List.of());
    }

    /** Where each part of the likely repair can come from, by item; only items that have a job of their own in it. */
    public Map<String, List<SourceOffer>> partSources(Appraisal appraisal) {
        return appraisal.likelyPlan().map(RepairPlan::jobs).orElse(List.of()).stream()
                .map(RepairPlan.Job::id).filter(items::containsKey)
                .collect(Collectors.toMap(id -> id, planner::sources, (a, b) -> a, TreeMap::new));
    }

    /** Why nothing allowed mends what is likelier failed than not, and what would; empty when there is a plan. */
    public Optional<String> whyNoPlan(Appraisal appraisal) {
        return planner.find(likely(appraisal.diagnosis())) instanceof PlanResult.Infeasible stuck
                ? Optional.of(stuck.message()) : Optional.empty();
    }

    /**
     * Two checks to make together, where none is worth its cost by itself; empty where one is.
     *
     * @param appraisal of this judge
     */
    public Optional<LookAhead.Pair> lookAhead(Appraisal appraisal) {
        if (appraisal.nextCheck().isPresent()
                || !(prepare(appraisal.listing()) instanceof Preparation.Ready ready)) {
            return Optional.empty();
        }
        return ready.listing().lookAhead(settings.terms(), settings.rule(), appraisal.checkedAt());
    }

    private Optional<Judged.Refused> refusal(Listing listing) {
        Currency currency = settings.terms().currency();
        Optional<Money> ask = listing.ask().get();
        if (ask.isPresent() && !ask.get().currency().equals(currency)) {
            return Optional.of(new Judged.Refused(listing,
                    "the price is in " + ask.get().currency() + " but the money lines are in " + currency,
                    "convert the price, or choose a price model and money lines of its market"));
        }
        if (listing.vehicle().year().get().isEmpty() && listing.vehicle().odometer().get().isEmpty()) {
            return Optional.of(new Judged.Refused(listing, "neither model year nor mileage is known",
                    "enter at least one of them"));
        }
        return Optional.empty();
    }

    private PreparedListing prepared(Listing listing, Diagnosis diagnosis) {
        ValueForecast value = values.forecast(listing.vehicle(), listing.seen());
        DealCase deal = new DealCase(
                diagnosis.patterns(settings.patterns()),
                Repairs.cheapest(planner),
                labour(),
                value,
                listing.towMiles().orElse(settings.towMilesAssumed()),
                listing.vehicle().title(),
                items,
                usualFaults.of(diagnosis.network()),
                listing.ask().get(),
                settings.method(),
                diagnosis.beliefs().stream().collect(Collectors.toMap(Belief::item, b -> b.prior().value())));
        return new PreparedListing(listing, value, diagnosis, DealEngine.prepare(deal),
                likelyPlan(diagnosis.network().items(), item -> diagnosis.belief(item).posterior().value()),
                checks, assumptions(listing, diagnosis));
    }

    private Labour labour() {
        Worker worker = settings.workshop().worker();
        return new Labour(worker.hourly(), worker instanceof Worker.OwnHands, worker::factor);
    }

    private Optional<RepairPlan> likelyPlan(List<String> all, ToDoubleFunction<String> chance) {
        return planner.find(likely(all, chance)).found();
    }

    private static Set<String> likely(Diagnosis diagnosis) {
        return likely(diagnosis.network().items(), item -> diagnosis.belief(item).posterior().value());
    }

    private static Set<String> likely(List<String> all, ToDoubleFunction<String> chance) {
        return all.stream().filter(item -> chance.applyAsDouble(item) > 0.5)
                .collect(Collectors.toUnmodifiableSet());
    }

    private List<String> assumptions(Listing listing, Diagnosis diagnosis) {
        List<String> all = new ArrayList<>(diagnosis.network().assumptions());
        if (listing.towMiles().get().isEmpty()) {
            all.add("towed " + Math.round(settings.towMilesAssumed()) + " miles");
        }
        return all;
    }
}
