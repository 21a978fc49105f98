package worthsaving.repair;

import java.io.IOException;
import java.io.Reader;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import java.util.Set;
import java.util.TreeSet;
import worthsaving.catalog.Applicability;
import worthsaving.catalog.Catalogue;
import worthsaving.catalog.CatalogueReader;
import worthsaving.catalog.FailureItem;
import worthsaving.quantity.Money;
import worthsaving.quantity.Seed;
import worthsaving.vehicle.Powertrain.Engine;
import worthsaving.vehicle.Powertrain.Gearbox;
import worthsaving.vehicle.Powertrain.TimingDrive;

/**
 * Microseconds per failure pattern on the shipped catalogue: different random sets of items that a
 * petrol turbo with chain and automatic can have. Run the main in the project's folder; no arguments.
 */
public final class RepairBench {

    private static final int PATTERNS = 20_000;
    private static final int ROUNDS = 4;

    private RepairBench() {}

    public static void main(String[] args) {
        Catalogue catalogue = CatalogueReader.read(RepairBench::open).orElseThrow();
        List<String> items = catalogue.items().stream()
                .filter(item -> fits(item.applies()))
                .map(FailureItem::id)
                .sorted()
                .toList();
        System.out.println(items.size() + " items apply; microseconds per pattern, last of " + ROUNDS + " rounds");
        System.out.println("failed   mean  median     99 %  from memory");
        for (int size : new int[] {3, 5, 8, 12, 20, 40}) {
            measure(catalogue, patterns(items, size), size);
        }
    }

    private static void measure(Catalogue catalogue, List<Set<String>> patterns, int size) {
        for (int round = 1; round <= ROUNDS; round++) {
            RepairPlanner planner = new RepairPlanner(catalogue, Workshop.ownHands(Money.usd(35)));
            double[] first = micros(planner, patterns);
            double[] again = micros(planner, patterns);
            if (round == ROUNDS) {
                double mean = Arrays.stream(first).average().orElseThrow();
                double memory = Arrays.stream(again).average().orElseThrow();
                Arrays.sort(first);
                System.out.printf("%6d %6.1f  %6.1f   %6.1f  %11.1f%n", size, mean, first[PATTERNS / 2],
                        first[PATTERNS * 99 / 100], memory);
            }
        }
    }

    private static double[] micros(RepairPlanner planner, List<Set<String>> patterns) {
        double[] micros = new double[patterns.size()];
        for (int p = 0; p < micros.length; p++) {
            long start = System.nanoTime();
            RepairPlan plan = planner.plan(patterns.get(p));
            micros[p] = (System.nanoTime() - start) / 1e3;
            if (!(plan.meanCost().amount() > 0)) {
                throw new IllegalStateException("a plan that costs nothing was timed: " + plan);
            }
        }
        return micros;
    }

    private static List<Set<String>> patterns(List<String> items, int size) {
        Random random = new Random(Seed.DEFAULT.derive("repair bench").value());
        List<String> deck = new ArrayList<>(items);
        List<Set<String>> patterns = new ArrayList<>();
        for (int p = 0; p < PATTERNS; p++) {
            Collections.shuffle(deck, random);
            patterns.add(new TreeSet<>(deck.subList(0, size)));
        }
        return patterns;
    }

    private static boolean fits(Applicability applies) {
        return applies.engines().contains(Engine.PETROL_TURBO)
                && applies.timings().contains(TimingDrive.CHAIN)
                && applies.gearboxes().contains(Gearbox.AUTOMATIC);
    }

    private static Reader open(String file) {
        try {
            return Files.newBufferedReader(Path.of("shared", "catalogue", file));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
