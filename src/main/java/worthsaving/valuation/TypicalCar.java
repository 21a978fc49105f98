package worthsaving.valuation;

import static worthsaving.valuation.UsualFacts.commonest;
import static worthsaving.valuation.UsualFacts.middle;

import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;

/** The car that others are compared with: the commonest make and model, and the middle or commonest of each fact. */
final class TypicalCar {

    private TypicalCar() {}

    static CarFacts of(List<CarFacts> cars) {
        String[] named = commonest(named(cars), CarFacts::makeAndModel).split("\\|", -1);
        double age = middle(cars, CarFacts::age);
        double day = cars.stream().mapToDouble(CarFacts::day).max().orElseThrow();
        List<CarFacts> alike = cars.stream().filter(c -> c.makeAndModel().equals(named[0] + "|" + named[1])).toList();
        SortedMap<String, String> features = new TreeMap<>();
        for (String name : cars.get(0).features().keySet()) {
            features.put(name, commonest(alike, c -> c.features().getOrDefault(name, "")));
        }
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
                "",
                0,
                day,
                commonest(cars, CarFacts::title),
                features);
    }

    private static List<CarFacts> named(List<CarFacts> cars) {
        List<CarFacts> named = cars.stream().filter(c -> !c.model().isEmpty()).toList();
        return named.isEmpty() ? cars : named;
    }
}
