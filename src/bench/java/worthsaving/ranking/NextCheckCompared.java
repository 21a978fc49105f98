package worthsaving.ranking;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.SplittableRandom;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import worthsaving.catalog.Catalogue;
import worthsaving.catalog.ShippedCatalogue;
import worthsaving.quantity.Seed;
import worthsaving.ranking.CheckSimulation.Car;
import worthsaving.ranking.CheckSimulation.Inspector;
import worthsaving.ranking.CheckSimulation.Result;

/** Net profit of ways to inspect over simulated cars with a known truth; docs/next-check.md says how to run it. */
public final class NextCheckCompared {

    private static final int TRAINING = 200;

    private NextCheckCompared() {}

    /** @param args number of cars, 1,000 when left out; then a seed */
    public static void main(String[] args) {
        int cars = args.length > 0 ? Integer.parseInt(args[0]) : 1_000;
        Seed seed = args.length > 1 ? new Seed(Long.parseLong(args[1])) : Seed.DEFAULT;
        Catalogue catalogue = ShippedCatalogue.load();
        CheckSimulation simulation = new CheckSimulation(catalogue, seed);
        List<Car> training = IntStream.range(0, TRAINING).mapToObj(n -> simulation.car(1_000_000 + n)).toList();
        List<Integer> learnt = simulation.byMeanWorth(training);
        Map<String, Inspector> inspectors = inspectors(simulation, learnt);
        Map<String, List<Result>> results = new LinkedHashMap<>();
        inspectors.keySet().forEach(name -> results.put(name, new ArrayList<>()));
        for (int n = 0; n < cars; n++) {
            Car car = simulation.car(n);
            long luck = seed.derive("luck " + n).value();
            inspectors.forEach((name, i) -> results.get(name).add(i.inspect(car, new SplittableRandom(luck))));
        }
        System.out.println("| way to inspect | net profit per car seen ± s.e. | next check earns more by ± s.e. "
                + "| checks per car | paid for looking | bought |");
        System.out.println("|---|---|---|---|---|---|");
        List<Result> next = results.get("next check, two steps");
        results.forEach((name, r) -> System.out.println(row(name, r, next)));
        System.out.println("The list that was best on other cars begins: " + learnt.stream().limit(10)
                .map(c -> simulation.checks().get(c).id()).collect(Collectors.joining(", ")));
    }

    private static Map<String, Inspector> inspectors(CheckSimulation simulation, List<Integer> learnt) {
        List<Integer> asWritten = IntStream.range(0, simulation.checks().size()).boxed().toList();
        Inspector next = simulation.nextCheck(true);
        Map<String, Inspector> all = new LinkedHashMap<>();
        all.put("next check, two steps", next);
        all.put("next check, one step", simulation.nextCheck(false));
        all.put("no look at all", simulation.withoutLooking());
        for (int length : new int[] {5, 10, 20, 40}) {
            all.put("checklist as the catalogue has it, first " + length, simulation.checklist(asWritten.subList(0, length)));
        }
        for (int length : new int[] {2, 5, 10, 20}) {
            all.put("checklist best on other cars, first " + length, simulation.checklist(learnt.subList(0, length)));
        }
        all.put("at random, as many as next check", simulation.atRandom(next));
        all.put("knowing the truth at no cost", simulation.clairvoyant());
        return all;
    }

    private static String row(String name, List<Result> results, List<Result> next) {
        int n = results.size();
        double[] profit = results.stream().mapToDouble(Result::profit).toArray();
        double[] behind = IntStream.range(0, n).mapToDouble(i -> next.get(i).profit() - profit[i]).toArray();
        return String.format(Locale.ROOT, "| %s | %s | %s | %.1f | %.1f | %.0f %% |", name, mean(profit),
                results == next ? "" : mean(behind), results.stream().mapToInt(Result::checks).average().orElse(0),
                results.stream().mapToDouble(Result::paid).average().orElse(0),
                100.0 * results.stream().filter(Result::bought).count() / n);
    }

    private static String mean(double[] x) {
        double sum = 0;
        double squares = 0;
        for (double v : x) {
            sum += v;
        }
        double mean = sum / x.length;
        for (double v : x) {
            squares += (v - mean) * (v - mean);
        }
        return String.format(Locale.ROOT, "%.1f ± %.1f", mean, Math.sqrt(squares / (x.length - 1) / x.length));
    }
}
