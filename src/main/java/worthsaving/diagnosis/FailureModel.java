package worthsaving.diagnosis;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.Collections;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;
import java.util.TreeMap;
import worthsaving.catalog.Catalogue;
import worthsaving.catalog.DamageLink;
import worthsaving.catalog.FailureItem;
import worthsaving.catalog.FindingKind;
import worthsaving.catalog.FindingLink;
import worthsaving.diagnosis.PowertrainBits.Gate;
import worthsaving.diagnosis.inference.NoisyOr;
import worthsaving.diagnosis.inference.Table;
import worthsaving.quantity.Probability;
import worthsaving.vehicle.Exposure;

/**
 * The catalogue in numbers for one car with one kind of engine. Variables 0 to n - 1 are the items in
 * catalogue order, the unknown bits of the powertrain follow.
 *
 * @param failures by item: its own prior as leak, and what damages it
 * @param gates by item: for which hidden bits it exists
 * @param findings by finding: its false rate as leak, and what produces it
 * @param silences what the seller would have told of with some chance, and did not
 * @param groups items of which at most one has failed
 * @param bitTables prior of the hidden bits
 * @param ranks by item: its place among all ids of the catalogue in alphabetical order
 */
record FailureModel(
        List<String> items,
        Map<String, Integer> indexOf,
        List<NoisyOr> failures,
        List<Gate> gates,
        Map<String, NoisyOr> findings,
        List<NoisyOr> silences,
        List<int[]> groups,
        int bits,
        List<Table> bitTables,
        int[] ranks) {

    /** Coordinates of the quasi-random sequence set aside for the engine and the hidden bits. */
    private static final int FIRST_ITEM_COORDINATE = 16;

    static FailureModel of(
            Catalogue catalogue,
            PowertrainBits powertrain,
            Exposure exposure,
            CarAge age,
            Map<String, Probability> unmentioned) {
        Map<String, Integer> indexOf = new LinkedHashMap<>();
        List<FailureItem> present = new ArrayList<>();
        for (FailureItem item : catalogue.items()) {
            if (powertrain.gate(item.applies(), 0) != Gate.NEVER) {
                indexOf.put(item.id(), present.size());
                present.add(item);
            }
        }
        List<Gate> gates = new ArrayList<>();
        Map<String, List<Integer>> groups = new TreeMap<>();
        for (FailureItem item : present) {
            gates.add(powertrain.gate(item.applies(), present.size()));
            if (!item.exclusiveGroup().isBlank()) {
                groups.computeIfAbsent(item.exclusiveGroup(), g -> new ArrayList<>()).add(indexOf.get(item.id()));
            }
        }
        boolean hidden = gates.stream().anyMatch(g -> !g.always());
        return new FailureModel(
                List.copyOf(indexOf.keySet()),
                Map.copyOf(indexOf),
                failures(catalogue, present, indexOf, exposure, age),
                gates,
                findings(catalogue, indexOf, unmentioned),
                silences(catalogue, indexOf, unmentioned),
                groups.values().stream()
                        .filter(g -> g.size() > 1)
                        .map(g -> g.stream().mapToInt(Integer::intValue).toArray())
                        .toList(),
                hidden ? powertrain.count() : 0,
                hidden ? powertrain.tables(present.size()) : List.of(),
                ranks(catalogue, present));
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

    private static List<NoisyOr> silences(
            Catalogue catalogue, Map<String, Integer> indexOf, Map<String, Probability> unmentioned) {
        Map<String, NoisyOr> findings = findings(catalogue, indexOf, Map.of());
        return new TreeMap<>(unmentioned)
                .entrySet().stream()
                .map(e -> findings.get(e.getKey()).told(e.getValue().value()))
                .toList();
    }

    /** Each finding as it is met by whoever looks, given that the seller told nothing of the unmentioned ones. */
    static Map<String, NoisyOr> findings(
            Catalogue catalogue, Map<String, Integer> indexOf, Map<String, Probability> unmentioned) {
        Map<String, Links> links = new HashMap<>();
        for (FindingLink link : catalogue.findingLinks()) {
            Integer item = indexOf.get(link.item());
            if (item != null) {
                links.computeIfAbsent(link.finding(), f -> new Links()).add(item, link.chance().mode());
            }
        }
        Map<String, NoisyOr> findings = new HashMap<>();
        for (FindingKind kind : catalogue.findings()) {
            NoisyOr finding = links.getOrDefault(kind.id(), new Links()).noisyOr(kind.falseRate().mode());
            Probability mention = unmentioned.get(kind.id());
            findings.put(kind.id(), mention == null ? finding : finding.untold(mention.value()));
        }
        return Map.copyOf(findings);
    }

    /** The coordinate of the quasi-random sequence that decides an item or bit: the same for every car. */
    int coordinate(int variable) {
        return variable < items.size() ? FIRST_ITEM_COORDINATE + ranks[variable] : 1 + variable - items.size();
    }

    /** Coordinates that a catalogue needs. */
    static int coordinates(Catalogue catalogue) {
        return FIRST_ITEM_COORDINATE + catalogue.items().size();
    }

    int itemCount() {
        return items.size();
    }

    /** @throws IllegalArgumentException for a finding that the catalogue does not know */
    NoisyOr finding(String id) {
        NoisyOr finding = findings.get(id);
        if (finding == null) {
            throw new IllegalArgumentException("the catalogue has no finding called '" + id + "'");
        }
        return finding;
    }

    boolean exists(int item, BitSet bitStates) {
        Gate gate = gates.get(item);
        int state = 0;
        for (int k = 0; k < gate.bits().length; k++) {
            state |= bitStates.get(gate.bits()[k]) ? 1 << k : 0;
        }
        return gate.open()[state];
    }

    /** True when another item of its exclusive group has failed. */
    boolean excluded(int item, BitSet failed) {
        for (int[] group : groups) {
            if (Arrays.stream(group).anyMatch(i -> i == item)
                    && Arrays.stream(group).anyMatch(i -> i != item && failed.get(i))) {
                return true;
            }
        }
        return false;
    }

    /** A draw of the hidden bits from their prior, set at the numbers of their variables. */
    BitSet drawBits(SplittableRandom random) {
        BitSet drawn = new BitSet();
        for (Table table : bitTables) {
            double left = random.nextDouble();
            int state = 0;
            while (state < table.values().length - 1 && left >= table.values()[state]) {
                left -= table.values()[state++];
            }
            for (int k = 0; k < table.scope().length; k++) {
                drawn.set(table.scope()[k], (state >> k & 1) == 1);
            }
        }
        return drawn;
    }

    /** Items in an order in which every cause comes before what it damages. */
    int[] causesFirst() {
        int[] order = new int[items.size()];
        BitSet placed = new BitSet();
        int count = 0;
        while (count < order.length) {
            int before = count;
            for (int i = 0; i < order.length; i++) {
                if (!placed.get(i) && Arrays.stream(failures.get(i).causes()).allMatch(placed::get)) {
                    placed.set(i);
                    order[count++] = i;
                }
            }
            if (count == before) {
                throw new IllegalArgumentException("secondary damage runs in a circle");
            }
        }
        return order;
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
