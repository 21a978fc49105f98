package worthsaving.diagnosis;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import worthsaving.catalog.Catalogue;
import worthsaving.catalog.DamageLink;
import worthsaving.catalog.FailureItem;
import worthsaving.catalog.FindingKind;
import worthsaving.catalog.FindingLink;
import worthsaving.diagnosis.PowertrainBits.Gate;
import worthsaving.diagnosis.inference.NoisyOr;
import worthsaving.diagnosis.inference.Table;
import worthsaving.vehicle.Exposure;
import worthsaving.vehicle.Vehicle;

/**
 * The catalogue in numbers for one car. Variables 0 to n - 1 are the items in catalogue order, the
 * unknown bits of the powertrain follow.
 *
 * @param failures by item: its own prior as leak, and what damages it
 * @param gates by item: for which hidden bits it exists
 * @param findings by finding: its false rate as leak, and what produces it
 * @param groups items of which at most one has failed
 * @param bitTables prior of the hidden bits
 * @param ranks by item: its place among all ids of the catalogue in alphabetical order
 * @param assumptions what the car's description left open, and what was assumed
 */
record FailureModel(
        List<String> items,
        Map<String, Integer> indexOf,
        List<NoisyOr> failures,
        List<Gate> gates,
        Map<String, NoisyOr> findings,
        List<int[]> groups,
        int bits,
        List<Table> bitTables,
        int[] ranks,
        List<String> assumptions) {

    /** Coordinates of the quasi-random sequence set aside for the hidden bits. */
    private static final int BIT_COORDINATES = 16;

    static FailureModel of(
            Catalogue catalogue, Vehicle vehicle, Exposure exposure, LocalDate on, PowertrainShares shares) {
        PowertrainBits powertrain = new PowertrainBits(vehicle.powertrain(), shares);
        Map<String, Integer> indexOf = new LinkedHashMap<>();
        List<FailureItem> present = new ArrayList<>();
        for (FailureItem item : catalogue.items()) {
            if (powertrain.gate(item.applies(), 0) != Gate.NEVER) {
                indexOf.put(item.id(), present.size());
                present.add(item);
            }
        }
        CarAge age = CarAge.of(vehicle, on);
        List<Gate> gates = new ArrayList<>();
        Map<String, List<Integer>> groups = new TreeMap<>();
        for (FailureItem item : present) {
            gates.add(powertrain.gate(item.applies(), present.size()));
            if (!item.exclusiveGroup().isBlank()) {
                groups.computeIfAbsent(item.exclusiveGroup(), g -> new ArrayList<>()).add(indexOf.get(item.id()));
            }
        }
        boolean hidden = gates.stream().anyMatch(g -> !g.always());
        List<String> assumptions = new ArrayList<>(age.assumptions());
        for (String field : powertrain.unknown()) {
            assumptions.add(field + " unknown: every kind weighed by how common it is (a guess)");
        }
        return new FailureModel(
                List.copyOf(indexOf.keySet()),
                Map.copyOf(indexOf),
                failures(catalogue, present, indexOf, exposure, age),
                gates,
                findings(catalogue, indexOf),
                groups.values().stream()
                        .filter(g -> g.size() > 1)
                        .map(g -> g.stream().mapToInt(Integer::intValue).toArray())
                        .toList(),
                hidden ? powertrain.count() : 0,
                hidden ? powertrain.tables(present.size()) : List.of(),
                ranks(catalogue, present),
                List.copyOf(assumptions));
    }

    private static int[] ranks(Catalogue catalogue, List<FailureItem> present) {
        List<String> sorted = catalogue.items().stream().map(FailureItem::id).sorted().toList();
        return present.stream().mapToInt(i -> Collections.binarySearch(sorted, i.id())).toArray();
    }

    private static List<NoisyOr> failures(
            Catalogue catalogue,
            List<FailureItem> present,
            Map<String, Integer> indexOf,
            Exposure exposure,
            CarAge age) {
        Map<String, Links> links = new HashMap<>();
        for (DamageLink link : catalogue.damage()) {
            Integer cause = indexOf.get(link.cause());
            if (cause != null) {
                links.computeIfAbsent(link.effect(), e -> new Links()).add(cause, link.chance(exposure).value());
            }
        }
        return present.stream()
                .map(item -> links.getOrDefault(item.id(), new Links())
                        .noisyOr(item.onset().prior(age.years(), age.odometer()).value()))
                .toList();
    }

    private static Map<String, NoisyOr> findings(Catalogue catalogue, Map<String, Integer> indexOf) {
        Map<String, Links> links = new HashMap<>();
        for (FindingLink link : catalogue.findingLinks()) {
            Integer item = indexOf.get(link.item());
            if (item != null) {
                links.computeIfAbsent(link.finding(), f -> new Links()).add(item, link.chance().mode());
            }
        }
        Map<String, NoisyOr> findings = new HashMap<>();
        for (FindingKind kind : catalogue.findings()) {
            findings.put(
                    kind.id(),
                    links.getOrDefault(kind.id(), new Links()).noisyOr(kind.falseRate().mode()));
        }
        return Map.copyOf(findings);
    }

    /** The coordinate of the quasi-random sequence that decides an item or bit: the same for every car. */
    int coordinate(int variable) {
        return variable < items.size() ? BIT_COORDINATES + ranks[variable] : variable - items.size();
    }

    /** Coordinates that bits and items need. */
    int coordinates() {
        return BIT_COORDINATES + Arrays.stream(ranks).max().orElse(0) + 1;
    }

    int itemCount() {
        return items.size();
    }

    NoisyOr finding(String id) {
        NoisyOr finding = findings.get(id);
        if (finding == null) {
            throw new IllegalArgumentException("the catalogue has no finding called '" + id + "'");
        }
        return finding;
    }

    int item(String id) {
        Integer index = indexOf.get(id);
        if (index == null) {
            throw new IllegalArgumentException("this car has no item called '" + id + "'");
        }
        return index;
    }

    private static final class Links {
        private final List<Integer> causes = new ArrayList<>();
        private final List<Double> chances = new ArrayList<>();

        void add(int cause, double chance) {
            causes.add(cause);
            chances.add(chance);
        }

        NoisyOr noisyOr(double leak) {
            return new NoisyOr(
                    leak,
                    causes.stream().mapToInt(Integer::intValue).toArray(),
                    chances.stream().mapToDouble(Double::doubleValue).toArray());
        }
    }
}
