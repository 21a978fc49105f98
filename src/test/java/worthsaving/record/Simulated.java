package worthsaving.record;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.SplittableRandom;
import org.apache.commons.statistics.distribution.LogNormalDistribution;
import worthsaving.quantity.Seed;

/** Invented finished cars whose truth is known. */
final class Simulated {

    private Simulated() {}

    /** What the forecaster believes against the truth: its median and spread as factors of the true ones. */
    record Forecaster(double median, double spread, double odds) {
        static final Forecaster RIGHT = new Forecaster(1, 1, 1);
    }

    /** Cars of differing worth; three items each, of differing chance. */
    static List<FinishedCar> cars(int n, Forecaster by, Seed seed) {
        SplittableRandom random = seed.generator();
        List<FinishedCar> cars = new ArrayList<>();
        for (int i = 0; i < n; i++) {
            double mu = 7 + 2 * random.nextDouble();
            double sigma = 0.1 + 0.3 * random.nextDouble();
            double value = LogNormalDistribution.of(mu, sigma).inverseCumulativeProbability(inside(random));
            LogNormalDistribution believed = LogNormalDistribution.of(mu + Math.log(by.median()), sigma * by.spread());
            List<Chance> items = new ArrayList<>();
            for (String item : List.of("A", "B", "C")) {
                double p = random.nextDouble();
                double odds = p / (1 - p) * by.odds();
                items.add(new Chance(item, odds / (1 + odds), random.nextDouble() < p));
            }
            cars.add(new FinishedCar("S" + i,
                    Map.of(Quantity.VALUE, Ensemble.ofQuantiles(believed::inverseCumulativeProbability)),
                    Map.of(Quantity.VALUE, value), items,
                    OptionalDouble.empty(), OptionalDouble.empty(), OptionalDouble.empty()));
        }
        return cars;
    }

    static double inside(SplittableRandom random) {
        return 1e-12 + (1 - 2e-12) * random.nextDouble();
    }
}
