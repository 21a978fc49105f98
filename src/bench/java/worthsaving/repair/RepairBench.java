package worthsaving.repair;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.SplittableRandom;
import java.util.TreeSet;
import worthsaving.catalog.AccessStep;
import worthsaving.catalog.Applicability;
import worthsaving.catalog.Catalogue;
import worthsaving.catalog.FailureItem;
import worthsaving.catalog.Onset;
import worthsaving.catalog.PartSource;
import worthsaving.catalog.Remedy;
import worthsaving.catalog.Tool;
import worthsaving.quantity.HoursRange;
import worthsaving.quantity.Money;
import worthsaving.quantity.MoneyRange;
import worthsaving.quantity.Probability;
import worthsaving.quantity.Range;
import worthsaving.quantity.Seed;
import worthsaving.quantity.Source;

/**
 * Patterns planned per second on an invented catalogue of the usual size (96 items, 24 access steps of
 * which one makes others quicker, 40 tools, 16 remedies). Run the main; no arguments.
 */
public final class RepairBench {

    private static final Source INVENTED = Source.guess("invented for the benchmark");
    private static final int ITEMS = 96;
    private static final int STEPS = 24;
    private static final int TOOLS = 40;
    private static final int PATTERNS = 20_000;

    private final SplittableRandom random = Seed.DEFAULT.derive("repair bench").generator();

    private RepairBench() {}

    public static void main(String[] args) {
        new RepairBench().run();
    }

    private void run() {
        Catalogue catalogue = catalogue();
        Workshop shop = Workshop.ownHands(Money.usd(35));
        for (int size : new int[] {3, 5, 8, 12, 20}) {
            List<Set<String>> patterns = patterns(size);
            for (int round = 0; round < 3; round++) {
                RepairPlanner planner = new RepairPlanner(catalogue, shop);
                double fresh = microsPerPattern(planner, patterns);
                double again = microsPerPattern(planner, patterns);
                if (round == 2) {
                    System.out.printf("%2d failed: %.1f us first time, %.1f us from memory%n", size, fresh, again);
                }
            }
        }
    }

    private static double microsPerPattern(RepairPlanner planner, List<Set<String>> patterns) {
        double sum = 0;
        long start = System.nanoTime();
        for (Set<String> pattern : patterns) {
            sum += planner.plan(pattern).meanCost().amount();
        }
        long took = System.nanoTime() - start;
        if (!(sum > 0)) {
            throw new IllegalStateException("plans that cost nothing were timed");
        }
        return took / 1e3 / patterns.size();
    }

    private List<Set<String>> patterns(int size) {
        List<Set<String>> patterns = new ArrayList<>();
        for (int p = 0; p < PATTERNS; p++) {
            Set<String> pattern = new TreeSet<>();
            while (pattern.size() < size) {
                pattern.add("I" + random.nextInt(ITEMS));
            }
            patterns.add(pattern);
        }
        return patterns;
    }

    private Catalogue catalogue() {
        List<AccessStep> steps = new ArrayList<>();
        for (int s = 0; s < STEPS; s++) {
            Set<String> requires = some("S", Math.min(s, 6), 0.2);
            Map<String, Double> eased = s > 0 && s < 10 ? Map.of("S12", 0.5) : Map.of();
            steps.add(new AccessStep("S" + s, "step " + s, requires, hours(3), eased, "", INVENTED));
        }
        List<FailureItem> items = new ArrayList<>();
        for (int i = 0; i < ITEMS; i++) {
            Set<String> access = i % 3 == 0 ? Set.of() : some("S", STEPS, 0.06);
            items.add(new FailureItem("I" + i, "system", "item " + i, Applicability.ALL,
                    new Onset(2, 20, 0.5, Probability.NEVER), new Range(0.5, 1, 2), "",
                    Map.of(PartSource.MAKER, money(900), PartSource.AFTERMARKET, money(500)), access, hours(4),
                    money(60), List.copyOf(some("T", TOOLS, 0.03)), Set.of(), Set.of(), "", INVENTED));
        }
        List<Remedy> remedies = new ArrayList<>();
        for (int r = 0; r < 16; r++) {
            boolean unit = r % 3 == 0;
            remedies.add(new Remedy("R" + r, "remedy " + r, some("I", ITEMS, unit ? 0.12 : 0.03), PartSource.USED,
                    money(unit ? 2500 : 600), hours(6), some("S", STEPS, 0.1), List.of(), Probability.of(0.9),
                    Probability.of(0.1), unit, "", INVENTED));
        }
        List<Tool> tools = new ArrayList<>();
        for (int t = 0; t < TOOLS; t++) {
            tools.add(new Tool("T" + t, "tool " + t, money(200), INVENTED));
        }
        return new Catalogue("bench", items, List.of(), List.of(), List.of(), steps, remedies, tools, List.of());
    }

    private Set<String> some(String prefix, int count, double share) {
        Set<String> ids = new TreeSet<>();
        for (int i = 0; i < count; i++) {
            if (random.nextDouble() < share) {
                ids.add(prefix + i);
            }
        }
        return ids;
    }

    private MoneyRange money(double most) {
        double low = random.nextDouble(most);
        return MoneyRange.usd(low, low * 1.5, low * 3);
    }

    private HoursRange hours(double most) {
        double low = random.nextDouble(most);
        return HoursRange.of(low, low * 1.4, low * 2);
    }
}
