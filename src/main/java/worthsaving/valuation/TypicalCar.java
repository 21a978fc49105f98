package worthsaving.valuation;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;

/** The car that others are compared with: the commonest make and model, and the middle or commonest of each fact. */
final class TypicalCar {

    private TypicalCar() {}

    static CarFacts of(List<CarFacts> cars) {
        String[] named = commonest(cars, CarFacts::makeAndModel).split("\\|", -1);
        double age = middle(cars, CarFacts::age);
        double day = cars.stream().mapToDouble(CarFacts::day).max().orElseThrow();
        List<CarFacts> alike = cars.stream().filter(c -> c.makeAndModel().equals(named[0] + "|" + named[1])).toList();
        return new CarFacts(
                named[0],
                named[1],
                Math.rint(day - age - 0.5),
                age,
                middle(cars, CarFacts::miles),
                commonest(cars, CarFacts::condition),
                middle(alike, CarFacts::cylinders),
                middle(alike, CarFacts::litres),
                middle(alike, CarFacts::power),
                commonest(alike, CarFacts::fuel),
                commonest(alike, CarFacts::gearbox),
                commonest(alike, CarFacts::body),
                commonest(alike, CarFacts::drive),
                0,
                day);
    }

    private static double middle(List<CarFacts> cars, ToDoubleFunction<CarFacts> fact) {
        return Quantiles.of(cars.stream().mapToDouble(fact), 0.5);
    }

    /** The commonest word; of equals the first in alphabetical order. */
    private static String commonest(List<CarFacts> cars, Function<CarFacts, String> fact) {
        Map<String, Integer> counts = new HashMap<>();
        cars.forEach(c -> counts.merge(fact.apply(c), 1, Integer::sum));
        return counts.entrySet().stream()
                .max(Map.Entry.<String, Integer>comparingByValue().thenComparing(Map.Entry.<String, Integer>comparingByKey().reversed()))
                .orElseThrow()
                .getKey();
    }
}
