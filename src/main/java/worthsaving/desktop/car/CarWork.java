package worthsaving.desktop.car;

import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.BooleanSupplier;
import java.util.function.IntConsumer;
import worthsaving.catalog.Catalogue;
import worthsaving.catalog.FailureItem;
import worthsaving.catalog.FindingKind;
import worthsaving.deal.WayOut;
import worthsaving.desktop.Ground;
import worthsaving.desktop.car.CarPicture.Item;
import worthsaving.desktop.car.CarPicture.Pull;
import worthsaving.desktop.car.CarPicture.Together;
import worthsaving.diagnosis.Belief;
import worthsaving.diagnosis.Diagnosis;
import worthsaving.diagnosis.Influence;
import worthsaving.ranking.Appraisal;
import worthsaving.ranking.Judge;
import worthsaving.ranking.JudgeSettings;
import worthsaving.ranking.Preparation;
import worthsaving.ranking.PreparedListing;
import worthsaving.repair.RepairPlanner;
import worthsaving.vehicle.Observation.Sight;
import worthsaving.vehicle.Observation.Witness;

/** Judges scenarios in the background, doing again only what an edit has changed. */
final class CarWork {

    private static final double WORTH_SHOWING = 0.03;
    private static final int MOST_ITEMS = 16;
    private static final int STORIES = 6;
    private static final int BINS = 36;
    private static final double WEAK = 0.05;
    /** An item that findings have made this much likelier stands before those that are merely usual. */
    private static final double MOVED = 1.2;

    private final Ground ground;
    private final Levers levers;
    private final Map<String, FailureItem> items;
    private final Map<String, FindingKind> findings;
    private Bench bench;
    private Prepared prepared;

    CarWork(Ground ground) {
        this.ground = ground;
        this.levers = new Levers(ground.settings());
        this.items = ground.catalogue().itemsById();
        this.findings = ground.catalogue().findingsById();
    }

    /** A judge and a planner for one position of the levers that are not quick, the value apart. */
    private record Bench(Map<Lever, Double> at, Judge judge, RepairPlanner planner) {}

    /** A car prepared, with what the screen says of its diagnosis. */
    private record Prepared(
            Scenario scenario, Map<Lever, Double> at, PreparedListing listing, List<Item> items,
            List<Together> stories) {}

    synchronized CarPicture of(Scenario scenario, BooleanSupplier cancelled, IntConsumer progress) {
        Bench use = bench(scenario);
        Map<Lever, Double> at = positions(scenario, true);
        if (prepared == null || !prepared.at().equals(at) || !prepared.scenario().sameCar(scenario)) {
            Judge judge = use.judge().with(levers.values(ground.values(), scenario));
            Preparation preparation = judge.prepare(scenario.listing());
            if (preparation instanceof Preparation.Refused refused) {
                return new CarPicture(scenario, Optional.empty(), Optional.of(refused.why()));
            }
            PreparedListing ready = ((Preparation.Ready) preparation).listing();
            prepared = new Prepared(scenario, at, ready, items(scenario, ready.diagnosis()),
                    stories(ready.diagnosis()));
        }
        JudgeSettings settings = levers.settings(scenario);
        Appraisal appraisal = prepared.listing().appraise(settings.terms(), settings.rule(), levers.price(scenario));
        WayOut best = appraisal.assessment().best();
        WayOut shown = best == WayOut.WALK_AWAY ? WayOut.REPAIR_AND_SELL : best;
        return new CarPicture(scenario, Optional.of(new CarPicture.Seen(
                appraisal, prepared.items(), prepared.stories(), appraisal.likelyPlan().map(use.planner()::quote),
                shown, Histogram.of(appraisal.assessment().way(shown).profit(), BINS))), Optional.empty());
    }

    private Bench bench(Scenario scenario) {
        Map<Lever, Double> at = positions(scenario, false);
        if (bench == null || !bench.at().equals(at)) {
            Catalogue catalogue = levers.catalogue(ground.catalogue(), scenario);
            JudgeSettings settings = levers.settings(scenario);
            bench = new Bench(at, new Judge(catalogue, ground.values(), settings),
                    new RepairPlanner(catalogue, settings.workshop()));
            prepared = null;
        }
        return bench;
    }

    private static Map<Lever, Double> positions(Scenario scenario, boolean value) {
        Map<Lever, Double> at = new EnumMap<>(Lever.class);
        at.putAll(scenario.levers());
        at.keySet().removeIf(lever -> lever.quick() || (lever == Lever.VALUE && !value));
        return Map.copyOf(at);
    }

    private List<Item> items(Scenario scenario, Diagnosis diagnosis) {
        return diagnosis.beliefs().stream()
                .filter(b -> b.posterior().value() >= WORTH_SHOWING)
                .sorted(Comparator.comparing((Belief b) -> b.posterior().value() < MOVED * b.prior().value())
                        .thenComparing(Belief::posterior, Comparator.reverseOrder())
                        .thenComparing(Belief::item))
                .limit(MOST_ITEMS)
                .map(b -> item(b, scenario, diagnosis))
                .toList();
    }

    private Item item(Belief belief, Scenario scenario, Diagnosis diagnosis) {
        FailureItem item = items.get(belief.item());
        List<Pull> pulls = diagnosis.influences(belief.item()).stream()
                .filter(i -> Math.abs(i.logRatio()) > WEAK)
                .map(i -> pull(i, scenario))
                .toList();
        return new Item(item.id(), item.system(), item.name(), item.caution(), belief.prior().value(),
                belief.posterior().value(), pulls);
    }

    private Pull pull(Influence influence, Scenario scenario) {
        Sight own = scenario.sight(influence.subject(), Witness.OWN_EYES);
        boolean seller = own != Sight.PRESENT && own != Sight.ABSENT;
        Sight sight = seller ? scenario.sight(influence.subject(), Witness.SELLER) : own;
        return new Pull(name(influence.subject()), sight, seller, influence.logRatio());
    }

    private List<Together> stories(Diagnosis diagnosis) {
        return diagnosis.stories(STORIES).stream()
                .map(s -> new Together(s.failed().stream().map(this::name).toList(), s.probability().value()))
                .toList();
    }

    private String name(String id) {
        return findings.containsKey(id) ? findings.get(id).name()
                : items.containsKey(id) ? items.get(id).name() : id;
    }
}
