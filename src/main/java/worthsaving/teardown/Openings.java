package worthsaving.teardown;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import worthsaving.catalog.AccessStep;
import worthsaving.catalog.Catalogue;
import worthsaving.catalog.FailureItem;
import worthsaving.quantity.Hours;
import worthsaving.quantity.Money;
import worthsaving.teardown.Opening.Suspect;

/** How far a car is open, and what opening further shows: what is open, and what leads to a suspect. Each step once. */
final class Openings {

    /** Behind a rarer suspect nobody opens anything; common practice, no source. */
    private static final double SUSPECTED = 0.05;

    private final Map<String, AccessStep> steps;
    private final OpenCar car;
    private final Map<Set<String>, List<Suspect>> behind = new HashMap<>();

    private Openings(Catalogue catalogue, OpenCar car) {
        this.steps = catalogue.accessById();
        this.car = car;
        for (FailureItem item : catalogue.items()) {
            double chance = car.failed.getOrDefault(item.id(), 0.0);
            if (chance >= SUSPECTED && !item.access().isEmpty()) {
                behind.computeIfAbsent(car.planner.withRequired(item.access()), n -> new ArrayList<>())
                        .add(new Suspect(item.id(), item.name(), chance));
            }
        }
    }

    /** Requirements before what they lead to, and what leads on right behind. */
    static List<Opening> of(Catalogue catalogue, OpenCar car) {
        Openings openings = new Openings(catalogue, car);
        Set<String> all = new TreeSet<>(car.open);
        openings.behind.keySet().forEach(all::addAll);
        Set<String> order = new LinkedHashSet<>();
        Map<String, Integer> depths = new TreeMap<>();
        all.forEach(id -> openings.depth(id, depths));
        all.stream().sorted(Comparator.comparing((String id) -> depths.get(id)).reversed().thenComparing(id -> id))
                .forEach(id -> openings.add(id, order));
        return order.stream().map(id -> openings.opening(id, depths.get(id))).toList();
    }

    private void add(String id, Set<String> order) {
        if (!order.contains(id)) {
            new TreeSet<>(steps.get(id).requires()).forEach(r -> add(r, order));
            order.add(id);
        }
    }

    private int depth(String id, Map<String, Integer> depths) {
        if (!depths.containsKey(id)) {
            depths.put(id, steps.get(id).requires().stream().mapToInt(r -> 1 + depth(r, depths)).max().orElse(0));
        }
        return depths.get(id);
    }

    private Opening opening(String id, int depth) {
        AccessStep step = steps.get(id);
        boolean open = car.open.contains(id);
        Map<String, Hours> still = car.planner.stillToOpen(Set.of(id));
        double cost = still.keySet().stream().mapToDouble(car::openingPrice).sum();
        return new Opening(id, step.name(), step.requires(), depth, open, !open && car.open.containsAll(step.requires()),
                still.getOrDefault(id, Hours.of(0)), new Money(cost, car.perHour().currency()),
                shows(id));
    }

    /** Suspects for which this is the last step. */
    private List<Suspect> shows(String id) {
        List<Suspect> shows = new ArrayList<>();
        Set<String> chain = car.planner.withRequired(Set.of(id));
        behind.forEach((need, suspects) -> {
            if (need.contains(id) && chain.containsAll(need)) {
                shows.addAll(suspects);
            }
        });
        shows.sort(Comparator.comparingDouble(Suspect::chance).reversed().thenComparing(Suspect::item));
        return shows;
    }
}
