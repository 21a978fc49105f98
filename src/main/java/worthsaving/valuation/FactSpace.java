package worthsaving.valuation;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;
import java.util.stream.Stream;

/**
 * Cars as points of which each pair lies some distance apart in every fact: numbers by their difference in standard
 * deviations, words by being the same or not.
 *
 * @param center of each of {@link #NUMBERS}, taken by a car that does not state it
 * @param scale its standard deviation; 1 where all cars have the same
 * @param words that occur, with their codes: makes, models with their make, the fields of {@link WordField}, and then
 *     each further column of the table by name
 * @param features names of the further columns, in order
 */
record FactSpace(double[] center, double[] scale, List<Map<String, Integer>> words, List<String> features) {

    static final List<ToDoubleFunction<CarFacts>> NUMBERS = List.of(
            CarFacts::age, CarFacts::miles, CarFacts::day, CarFacts::cylinders, CarFacts::litres, CarFacts::power,
            CarFacts::damage);
    private static final int OWN_WORDS = 2 + WordField.ALL.size();

    /** So many standard deviations from the center at most: beyond it a car is like the farthest ones. */
    private static final double FARTHEST = 4;

    /** Word that no car of the data has; it differs from every other one, also from its like. */
    private static final int UNSEEN = -1;

    /**
     * One car.
     *
     * @param numbers in standard deviations from the center
     * @param codes of its words
     */
    record Point(double[] numbers, int[] codes) {}

    FactSpace {
        words = List.copyOf(words);
        features = List.copyOf(features);
        if (center.length != NUMBERS.size() || scale.length != NUMBERS.size()
                || words.size() != OWN_WORDS + features.size()) {
            throw new IllegalArgumentException("the space of facts has " + center.length + " centers, " + scale.length
                    + " scales and " + words.size() + " lists of words");
        }
    }

    /** The space of all facts that occur in these cars. */
    static FactSpace over(List<CarFacts> cars) {
        double[] center = new double[NUMBERS.size()];
        double[] scale = new double[NUMBERS.size()];
        for (int j = 0; j < center.length; j++) {
            double[] stated = cars.stream().mapToDouble(NUMBERS.get(j)).filter(Double::isFinite).toArray();
            double mean = Arrays.stream(stated).average().orElse(0);
            double spread = Math.sqrt(Arrays.stream(stated).map(v -> (v - mean) * (v - mean)).average().orElse(0));
            center[j] = mean;
            scale[j] = spread > 1e-9 * (1 + Math.abs(mean)) ? spread : 1;
        }
        List<String> features = new TreeSet<>(cars.stream().flatMap(c -> c.features().keySet().stream()).toList())
                .stream().toList();
        List<Map<String, Integer>> words = new ArrayList<>();
        for (Function<CarFacts, String> word : words(features)) {
            Map<String, Integer> codes = new LinkedHashMap<>();
            cars.stream().map(word).sorted().distinct().forEach(w -> codes.put(w, codes.size()));
            words.add(codes);
        }
        return new FactSpace(center, scale, words, features);
    }

    private static List<Function<CarFacts, String>> words(List<String> features) {
        Stream<Function<CarFacts, String>> own = Stream.concat(
                Stream.of(CarFacts::make, CarFacts::makeAndModel), WordField.ALL.stream().map(f -> f::of));
        return Stream.concat(own, features.stream().map(name -> car -> car.features().getOrDefault(name, ""))).toList();
    }

    /** Facts in which two cars may lie apart: numbers, then words. */
    int facts() {
        return center.length + words.size();
    }

    Point point(CarFacts car) {
        double[] numbers = new double[center.length];
        for (int j = 0; j < numbers.length; j++) {
            double v = NUMBERS.get(j).applyAsDouble(car);
            numbers[j] = Double.isFinite(v)
                    ? Math.max(-FARTHEST, Math.min(FARTHEST, (v - center[j]) / scale[j])) : 0;
        }
        List<Function<CarFacts, String>> all = words(features);
        int[] codes = new int[words.size()];
        Arrays.setAll(codes, j -> words.get(j).getOrDefault(all.get(j).apply(car), UNSEEN));
        return new Point(numbers, codes);
    }

    /** Squared distance of two cars in one fact. */
    double apart(int fact, Point a, Point b) {
        if (fact < center.length) {
            double d = a.numbers()[fact] - b.numbers()[fact];
            return d * d;
        }
        int word = a.codes()[fact - center.length];
        return word != UNSEEN && word == b.codes()[fact - center.length] ? 0 : 1;
    }
}
