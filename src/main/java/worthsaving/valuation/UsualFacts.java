package worthsaving.valuation;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;

/**
 * What a make or model usually has: fuel, gearbox, body and engine that an advert leaves out are filled in from
 * here, since price tables nearly always state them and a gap would be read as something unusual.
 */
record UsualFacts(SortedMap<String, Usual> byName) {

    /** Commonest words and middle figures of the cars of one make or model; "" or NaN when never stated. */
    record Usual(String fuel, String gearbox, String body, double cylinders, double litres, double power) {

        static Usual of(List<CarFacts> cars) {
            return new Usual(
                    commonest(cars, CarFacts::fuel),
                    commonest(cars, CarFacts::gearbox),
                    commonest(cars, CarFacts::body),
                    middle(cars, CarFacts::cylinders),
                    middle(cars, CarFacts::litres),
                    middle(cars, CarFacts::power));
        }
    }

    private static final String ALL = "";

    static UsualFacts of(List<CarFacts> cars) {
        SortedMap<String, List<CarFacts>> groups = new TreeMap<>();
        for (CarFacts car : cars) {
            for (String name : List.of(ALL, car.make(), car.makeAndModel())) {
                groups.computeIfAbsent(name, n -> new ArrayList<>()).add(car);
            }
        }
        SortedMap<String, Usual> usual = new TreeMap<>();
        groups.forEach((name, group) -> usual.put(name, Usual.of(group)));
        return new UsualFacts(usual);
    }

    /** The car with its gaps filled from its model, else its make, else all cars. */
    CarFacts fill(CarFacts car) {
        Usual usual = byName.getOrDefault(car.makeAndModel(), byName.getOrDefault(car.make(), byName.get(ALL)));
        return new CarFacts(
                car.make(),
                car.model(),
                car.year(),
                car.age(),
                car.miles(),
                car.condition(),
                stated(car.cylinders(), usual.cylinders()),
                stated(car.litres(), usual.litres()),
                stated(car.power(), usual.power()),
                stated(car.fuel(), usual.fuel()),
                stated(car.gearbox(), usual.gearbox()),
                stated(car.body(), usual.body()),
                car.drive(),
                car.damage(),
                car.day(),
                car.title(),
                car.features());
    }

    private static double stated(double own, double usual) {
        return Double.isNaN(own) ? usual : own;
    }

    private static String stated(String own, String usual) {
        return own.isEmpty() ? usual : own;
    }

    static double middle(List<CarFacts> cars, ToDoubleFunction<CarFacts> fact) {
        return Quantiles.of(cars.stream().mapToDouble(fact), 0.5);
    }

    /** The commonest word that is stated, of equals the first in alphabetical order; "" when none is. */
    static String commonest(List<CarFacts> cars, Function<CarFacts, String> fact) {
        Map<String, Integer> counts = new HashMap<>();
        cars.forEach(c -> counts.merge(fact.apply(c), 1, Integer::sum));
        counts.remove("");
        return counts.entrySet().stream()
                .max(Map.Entry.<String, Integer>comparingByValue()
                        .thenComparing(Map.Entry.<String, Integer>comparingByKey().reversed()))
                .map(Map.Entry::getKey)
                .orElse("");
    }
}
