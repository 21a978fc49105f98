package worthsaving.desktop.car;

import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.BooleanSupplier;
import java.util.function.IntConsumer;
import java.util.stream.IntStream;
import worthsaving.catalog.Catalogue;
import worthsaving.catalog.FailureItem;
import worthsaving.catalog.FindingKind;
import worthsaving.catalog.Flag;
import worthsaving.deal.PreparedDeal;
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

    /** Items offered as sliders. */
    private static final int MAIN_ITEMS = 4;
    private static final double MAYBE = 0.02;

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

    /**
     * What is asked for.
     *
     * @param rough while a lever is dragged
     */
    record Ask(Scenario scenario, boolean rough) {

        /** Whether nothing but levers differs. */
        boolean sameCar(Ask other) {
            return scenario.sameCar(other.scenario);
        }
    }

    /** A judge and a planner for one position of the levers that are not quick, the value apart. */
    private record Bench(Map<Dial, Double> at, Judge judge, RepairPlanner planner) {}

    /** A car prepared, with what the screen says of its diagnosis. */
    private record Prepared(Scenario scenario, Map<Dial, Double> at, Nearby exact, Nearby rough, List<Item> items,
            List<Together> stories, Map<ItemDial, Double> main) {}

    synchronized CarPicture of(Ask ask, BooleanSupplier cancelled, IntConsumer progress) {
        Scenario scenario = ask.scenario();
        boolean rough = ask.rough() && prepared != null && prepared.scenario().sameCar(scenario);
        if (!rough) {
            Map<Dial, Double> at = positions(scenario, true);
            Bench use = bench(scenario);
            if (prepared == null || !prepared.at().equals(at) || !prepared.scenario().sameCar(scenario)) {
                Judge judge = use.judge().with(levers.values(ground.values(), scenario));
                Preparation preparation = judge.prepare(scenario.listing());
                if (preparation instanceof Preparation.Refused refused) {
                    return new CarPicture(scenario, false, Optional.empty(), Optional.of(refused.why()));
                }
                prepared = prepared(scenario, at, judge, ((Preparation.Ready) preparation).listing());
            }
        }
        Nearby nearby = rough ? prepared.rough() : prepared.exact();
        Appraisal appraisal = nearby.appraise(scenario);
        WayOut best = appraisal.assessment().best();
        WayOut shown = best == WayOut.WALK_AWAY ? WayOut.REPAIR_AND_SELL : best;
        return new CarPicture(scenario, rough, Optional.of(new CarPicture.Seen(
                scenario, appraisal, itemsNow(scenario, nearby), prepared.stories(),
                appraisal.likelyPlan().map(bench.planner()::quote), prepared.main(),
                shown, Histogram.of(appraisal.assessment().way(shown).profit(), BINS), prepared.exact())),
                Optional.empty());
    }

    /** Expected profit of one way out with everything prepared anew; costly, keeps nothing, may run beside others. */
    double exactProfit(Scenario scenario, WayOut way) {
        JudgeSettings settings = levers.settings(scenario);
        Judge judge = new Judge(levers.catalogue(ground.catalogue(), scenario),
                levers.values(ground.values(), scenario), settings);
        if (judge.prepare(scenario.listing()) instanceof Preparation.Ready ready) {
            return judge.believing(ready.listing(), scenario.chances()).deal()
                    .expectedProfit(settings.terms(), way, levers.price(scenario).orElseThrow());
        }
        throw new IllegalArgumentException("a car that cannot be judged has no profit");
    }

    private Prepared prepared(Scenario scenario, Map<Dial, Double> at, Judge judge, PreparedListing listing) {
        Nearby exact = new Nearby(judge, listing, scenario, levers);
        Map<ItemDial, Double> main = main(scenario, listing);
        Set<String> dialled = new HashSet<>(scenario.chances().keySet());
        main.keySet().forEach(dial -> dialled.add(dial.item()));
        return new Prepared(scenario, at, exact, exact.rough(), items(scenario, listing.diagnosis(), dialled),
                stories(listing.diagnosis()), main);
    }

    private Map<ItemDial, Double> main(Scenario scenario, PreparedListing listing) {
        JudgeSettings settings = levers.settings(scenario);
        Map<ItemDial, Double> main = new LinkedHashMap<>();
        listing.deal().assess(settings.terms(), settings.rule(), levers.price(scenario)).effects().stream()
                .filter(e -> e.probability() > MAYBE && e.probability() < 1 - MAYBE)
                .filter(e -> !items.get(e.item()).flags().contains(Flag.SALE_PREPARATION))
                .limit(MAIN_ITEMS)
                .forEach(e -> main.put(new ItemDial(e.item(), e.name()), 100 * e.probability()));
        return main;
    }

    /** The chances as the user has set them, and those of other items as they go with them. */
    private List<Item> itemsNow(Scenario scenario, Nearby nearby) {
        Map<String, Double> chances = scenario.chances();
        if (chances.isEmpty()) {
            return prepared.items();
        }
        PreparedDeal deal = nearby.deal(scenario);
        return prepared.items().stream().map(i -> i.at(deal.chance(i.id()), chances.containsKey(i.id()))).toList();
    }

    private Bench bench(Scenario scenario) {
        Map<Dial, Double> at = positions(scenario, false);
        if (bench == null || !bench.at().equals(at)) {
            Catalogue catalogue = levers.catalogue(ground.catalogue(), scenario);
            JudgeSettings settings = levers.settings(scenario);
            bench = new Bench(at, new Judge(catalogue, ground.values(), settings),
                    new RepairPlanner(catalogue, settings.workshop()));
            prepared = null;
        }
        return bench;
    }

    private static Map<Dial, Double> positions(Scenario scenario, boolean value) {
        Map<Dial, Double> at = new HashMap<>(scenario.levers());
        at.keySet().removeIf(dial -> dial.quick() || (dial == Lever.VALUE && !value));
        return Map.copyOf(at);
    }

    /** @param dialled items that have a slider and so are shown in any case */
    private List<Item> items(Scenario scenario, Diagnosis diagnosis, Set<String> dialled) {
        List<Belief> sorted = diagnosis.beliefs().stream()
                .filter(b -> b.posterior().value() >= WORTH_SHOWING || dialled.contains(b.item()))
                .sorted(Comparator.comparing((Belief b) -> b.posterior().value() < MOVED * b.prior().value())
                        .thenComparing(Belief::posterior, Comparator.reverseOrder())
                        .thenComparing(Belief::item))
                .toList();
        return IntStream.range(0, sorted.size())
                .filter(i -> i < MOST_ITEMS || dialled.contains(sorted.get(i).item()))
                .mapToObj(i -> item(sorted.get(i), scenario, diagnosis))
                .toList();
    }

    private Item item(Belief belief, Scenario scenario, Diagnosis diagnosis) {
        FailureItem item = items.get(belief.item());
        List<Pull> pulls = diagnosis.influences(belief.item()).stream()
                .filter(i -> Math.abs(i.logRatio()) > WEAK)
                .map(i -> pull(i, scenario))
                .toList();
        return new Item(item.id(), item.system(), item.name(), item.caution(), belief.prior().value(),
                belief.posterior().value(), false, pulls);
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
