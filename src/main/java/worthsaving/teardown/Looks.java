package worthsaving.teardown;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import worthsaving.catalog.AccessStep;
import worthsaving.catalog.Catalogue;
import worthsaving.catalog.FailureItem;
import worthsaving.catalog.FindingKind;
import worthsaving.catalog.FindingKind.Stage;
import worthsaving.diagnosis.Diagnosis;
import worthsaving.diagnosis.FindingChances;
import worthsaving.inspection.CheckCosts;
import worthsaving.teardown.Prospect.Look;

/**
 * What can be looked at from here. Opening an access step shows whether the items behind it have failed: common
 * practice, no source; a blurred sight belongs in the journal as unsure. Tests of the complete car are offered
 * while nothing is open.
 */
final class Looks {

    private static final double UNLIKELY = 0.02;
    /** Items told apart at one look: those that matter most. */
    private static final int TOLD_APART = 3;
    private static final int MOST_STEPS = 60;

    private final Catalogue catalogue;
    private final OpenCar car;
    private final TeardownTerms terms;
    private final Map<String, FailureItem> items;
    private final Map<Set<String>, List<FailureItem>> behind = new LinkedHashMap<>();
    private final List<String> steps;

    Looks(Catalogue catalogue, OpenCar car, TeardownTerms terms) {
        this.catalogue = catalogue;
        this.car = car;
        this.terms = terms;
        this.items = catalogue.itemsById();
        Map<String, Set<String>> needs = new TreeMap<>();
        suspects().forEach(item -> needs.put(item.id(), car.closedBefore(item)));
        new TreeMap<>(needs).values().forEach(need -> behind.computeIfAbsent(need, n -> needs.entrySet().stream()
                .filter(e -> n.containsAll(e.getValue()))
                .map(e -> items.get(e.getKey())).toList()));
        steps = behind.keySet().stream().flatMap(Set::stream).distinct().sorted().limit(MOST_STEPS).toList();
        behind.keySet().removeIf(need -> !steps.containsAll(need));
    }

    /** Items that may have failed or not and can be seen once reached. */
    List<FailureItem> suspects() {
        return car.failed.entrySet().stream()
                .filter(e -> e.getValue() > UNLIKELY && e.getValue() < 1 - UNLIKELY)
                .map(e -> items.get(e.getKey()))
                .filter(item -> !item.access().isEmpty())
                .toList();
    }

    /** Access steps that a look may open. */
    List<String> steps() {
        return steps;
    }

    /** @param gain what knowing an item would be worth at no cost, by id */
    List<Look> opening(Map<String, Double> gain) {
        List<Look> looks = new ArrayList<>();
        behind.forEach((need, all) -> {
            List<FailureItem> seen = all.stream()
                    .filter(i -> gain.getOrDefault(i.id(), 0.0) > 0)
                    .sorted(Comparator.comparingDouble((FailureItem i) -> -gain.get(i.id()))
                            .thenComparing(FailureItem::id))
                    .limit(TOLD_APART)
                    .toList();
            if (!seen.isEmpty()) {
                looks.add(look(need, seen));
            }
        });
        return looks;
    }

    private Look look(Set<String> need, List<FailureItem> seen) {
        int[] state = new int[car.patterns.size()];
        for (int p = 0; p < state.length; p++) {
            for (int i = 0; i < seen.size(); i++) {
                state[p] |= car.patterns.get(p).get(car.items.indexOf(seen.get(i).id())) ? 1 << i : 0;
            }
        }
        int[] met = Arrays.stream(state).distinct().sorted().toArray();
        double[][] likelihood = new double[met.length][state.length];
        List<String> names = new ArrayList<>();
        for (int r = 0; r < met.length; r++) {
            int result = met[r];
            for (int p = 0; p < state.length; p++) {
                likelihood[r][p] = state[p] == result ? 1 : 0;
            }
            names.add(result == 0 ? (seen.size() == 1 ? "sound" : "all sound")
                    : IntStream.range(0, seen.size()).filter(i -> (result >> i & 1) == 1)
                            .mapToObj(i -> seen.get(i).name()).collect(Collectors.joining("; ")));
        }
        long opens = 0;
        for (String step : need) {
            opens |= 1L << steps.indexOf(step);
        }
        String subjects = seen.stream().map(i -> brief(i.name())).collect(Collectors.joining("; "));
        return new Look(need.isEmpty() ? "OPEN_NOW" : String.join(" ", need),
                (need.isEmpty() ? "look, it is open: " : outermost(need) + ": look at ") + subjects,
                terms.look().value() * seen.size() * car.perHour().amount(), opens, names, likelihood);
    }

    /** The steps that no other of them requires, by name. */
    private String outermost(Set<String> need) {
        Map<String, AccessStep> byId = catalogue.accessById();
        Set<String> required = new TreeSet<>();
        need.forEach(id -> required.addAll(byId.get(id).requires()));
        return need.stream().filter(id -> !required.contains(id)).map(id -> brief(byId.get(id).name()))
                .collect(Collectors.joining(" and "));
    }

    /** A name without the list behind its colon, where what stands before it says enough by itself. */
    private static String brief(String name) {
        int colon = name.indexOf(':');
        return colon > 0 && name.lastIndexOf(' ', colon) > 0 ? name.substring(0, colon) : name;
    }

    /**
     * Tests of the complete car, each with two results.
     *
     * @param riskyToo whether those that can hurt the car are among them
     */
    List<Look> testing(Diagnosis diagnosis, CheckCosts costs, boolean riskyToo) {
        if (!car.open.isEmpty()) {
            return List.of();
        }
        FindingChances chances = diagnosis.network().findingChances(car.patterns);
        List<Look> looks = new ArrayList<>();
        for (FindingKind finding : catalogue.findings()) {
            boolean now = finding.stage() == Stage.DRIVEWAY || finding.stage() == Stage.TOOLS
                    || finding.stage() == Stage.INSPECTION;
            if (now && !diagnosis.evidence().findings().containsKey(finding.id())
                    && (riskyToo || !finding.canDoDamage())) {
                double[] present = chances.of(finding.id());
                double[] absent = Arrays.stream(present).map(c -> 1 - c).toArray();
                looks.add(new Look(finding.id(), "check: " + finding.name(), costs.of(finding).amount(), 0,
                        List.of("yes", "no"), new double[][] {present, absent}));
            }
        }
        return looks;
    }
}
