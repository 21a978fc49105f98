package worthsaving.valuation;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.Stream;

/**
 * Turns a car into the vector that trees see. Words become numbers by target statistics (Micci-Barreca 2001):
 * their place in the order of mean ln price, pooled towards the whole. Makes and models also get three pooled
 * figures: level, level reduced to a new car, and loss per year; a model never seen takes those of its make.
 * A further column of the table is one more figure: the pooled level, reduced to a new car, of its word.
 */
final class Encoder {

    /** Columns in order; the words stand in the order of {@link WordField}. */
    static final List<String> COLUMNS = List.of(
            "age", "year", "miles", "miles per year", "day", "cylinders", "litres", "power", "damage",
            "make level", "model level", "model level when new", "model loss per year", "make place", "model place",
            "condition", "fuel", "gearbox", "body", "drive", "title", "hedonic");

    /** Columns that are codes without an order. */
    private static final Set<String> CODES = Set.of("make place", "model place", "fuel", "gearbox", "body");

    static final int WIDTH = COLUMNS.size();
    private static final int FIRST_WORD = COLUMNS.indexOf("condition");
    private static final double POOLING_ROWS = 10;
    private static final double SLOPE_POOLING = 500;
    private static final double COMMON_LOSS = -0.09;

    /** Pooled figures of one make or model: rows, mean ln price, the same when new, loss of ln price per year. */
    record Level(double rows, double level, double whenNew, double loss) {}

    private final Map<String, Level> makes;
    private final Map<String, Level> models;
    private final List<Map<String, Integer>> words;
    private final SortedMap<String, SortedMap<String, Level>> features;
    private final Map<String, Integer> makePlaces;
    private final Map<String, Integer> modelPlaces;

    /**
     * Makes and models in alphabetical order: their places are codes in the trees.
     *
     * @param features for each further column the level of its words
     */
    Encoder(
            SortedMap<String, Level> makes,
            SortedMap<String, Level> models,
            List<Map<String, Integer>> words,
            SortedMap<String, SortedMap<String, Level>> features) {
        this.makes = makes;
        this.models = models;
        this.words = words;
        this.features = features;
        this.makePlaces = places(makes);
        this.modelPlaces = places(models);
    }

    static Encoder fit(List<CarFacts> cars, double[] y) {
        Sums all = new Sums();
        Map<String, Sums> makes = new TreeMap<>();
        Map<String, Sums> models = new TreeMap<>();
        List<Map<String, Sums>> words = new ArrayList<>();
        WordField.ALL.forEach(f -> words.add(new TreeMap<>()));
        SortedMap<String, SortedMap<String, Sums>> features = new TreeMap<>();
        for (int i = 0; i < y.length; i++) {
            CarFacts car = cars.get(i);
            all.add(car, y[i]);
            makes.computeIfAbsent(car.make(), m -> new Sums()).add(car, y[i]);
            if (!car.model().isEmpty()) {
                models.computeIfAbsent(car.makeAndModel(), m -> new Sums()).add(car, y[i]);
            }
            for (WordField field : WordField.ALL) {
                words.get(field.ordinal()).computeIfAbsent(field.of(car), w -> new Sums()).add(car, y[i]);
            }
            for (Map.Entry<String, String> feature : car.features().entrySet()) {
                features.computeIfAbsent(feature.getKey(), n -> new TreeMap<>())
                        .computeIfAbsent(feature.getValue(), w -> new Sums())
                        .add(car, y[i]);
            }
        }
        Level whole = all.pooled(new Level(0, all.y / all.n, 0, COMMON_LOSS), 0);
        SortedMap<String, Level> makeLevels = new TreeMap<>();
        makes.forEach((name, sums) -> makeLevels.put(name, sums.pooled(whole, POOLING_ROWS)));
        SortedMap<String, Level> modelLevels = new TreeMap<>();
        models.forEach((name, sums) -> modelLevels.put(
                name, sums.pooled(makeLevels.get(name.substring(0, name.indexOf('|'))), POOLING_ROWS)));
        List<Map<String, Integer>> order = words.stream().map(w -> order(w, whole)).toList();
        SortedMap<String, SortedMap<String, Level>> featureLevels = new TreeMap<>();
        features.forEach((name, byWord) -> {
            SortedMap<String, Level> levels = new TreeMap<>();
            byWord.forEach((word, sums) -> levels.put(word, sums.pooled(whole, POOLING_ROWS)));
            featureLevels.put(name, levels);
        });
        return new Encoder(makeLevels, modelLevels, order, featureLevels);
    }

    private static Map<String, Integer> order(Map<String, Sums> words, Level whole) {
        List<String> sorted = new ArrayList<>(words.keySet());
        sorted.sort(Comparator.comparingDouble(w -> words.get(w).pooled(whole, POOLING_ROWS).whenNew()));
        Map<String, Integer> order = new LinkedHashMap<>();
        sorted.forEach(w -> order.put(w, order.size()));
        return order;
    }

    private static Map<String, Integer> places(Map<String, Level> levels) {
        Map<String, Integer> places = new HashMap<>();
        levels.keySet().forEach(name -> places.put(name, places.size()));
        return places;
    }

    private static float place(Map<String, Integer> places, String name) {
        Integer place = places.get(name);
        return place == null ? Float.NaN : place;
    }

    /** Columns that a car fills: {@link #COLUMNS} and then one for each further column of the table. */
    int width() {
        return WIDTH + features.size();
    }

    /** Types of the columns, for {@link Boosting.Rows}. */
    String[] types() {
        Stream<String> own = COLUMNS.stream().map(c -> CODES.contains(c) ? "c" : "q");
        return Stream.concat(own, features.keySet().stream().map(f -> "q")).toArray(String[]::new);
    }

    /**
     * @param statistics encoder whose make and model figures are used; for training rows one that has not
     *     seen the row, else this
     * @param hedonic ln price by the hedonic regression
     */
    void encode(CarFacts car, Encoder statistics, double hedonic, float[] x, int at) {
        Level make = statistics.makes.get(car.make());
        Level model = statistics.models.getOrDefault(car.makeAndModel(), make);
        x[at] = (float) car.age();
        x[at + 1] = (float) car.year();
        x[at + 2] = (float) car.miles();
        x[at + 3] = (float) car.milesPerYear();
        x[at + 4] = (float) car.day();
        x[at + 5] = (float) car.cylinders();
        x[at + 6] = (float) car.litres();
        x[at + 7] = (float) car.power();
        x[at + 8] = (float) car.damage();
        x[at + 9] = make == null ? Float.NaN : (float) make.whenNew();
        x[at + 10] = model == null ? Float.NaN : (float) model.level();
        x[at + 11] = model == null ? Float.NaN : (float) model.whenNew();
        x[at + 12] = model == null ? Float.NaN : (float) model.loss();
        x[at + 13] = place(makePlaces, car.make());
        x[at + 14] = place(modelPlaces, car.makeAndModel());
        for (WordField field : WordField.ALL) {
            Integer code = words.get(field.ordinal()).get(field.of(car));
            x[at + FIRST_WORD + field.ordinal()] = code == null ? Float.NaN : code;
        }
        x[at + WIDTH - 1] = (float) hedonic;
        int next = at + WIDTH;
        for (String name : features.keySet()) {
            Map<String, Level> levels = statistics.features.getOrDefault(name, Collections.emptySortedMap());
            Level level = levels.get(car.features().getOrDefault(name, ""));
            x[next++] = level == null ? Float.NaN : (float) level.whenNew();
        }
    }

    Map<String, Level> makes() {
        return makes;
    }

    Map<String, Level> models() {
        return models;
    }

    List<Map<String, Integer>> words() {
        return words;
    }

    SortedMap<String, SortedMap<String, Level>> features() {
        return features;
    }

    /** Running sums from which a pooled level follows. */
    private static final class Sums {
        private double n;
        private double y;
        private double aged;
        private double agedY;
        private double ages;
        private double agesSquared;
        private double agesY;

        private void add(CarFacts car, double value) {
            n++;
            y += value;
            if (!Double.isNaN(car.age())) {
                aged++;
                agedY += value;
                ages += car.age();
                agesSquared += car.age() * car.age();
                agesY += car.age() * value;
            }
        }

        /** Means with {@code weight} rows of the prior added; the slope with a fixed sum of squares. */
        private Level pooled(Level prior, double weight) {
            double spread = aged == 0 ? 0 : agesSquared - ages * ages / aged;
            double covariance = aged == 0 ? 0 : agesY - ages * agedY / aged;
            double loss = (covariance + SLOPE_POOLING * prior.loss()) / (spread + SLOPE_POOLING);
            double whenNew = agedY - COMMON_LOSS * ages;
            return new Level(
                    n,
                    (y + weight * prior.level()) / (n + weight),
                    (whenNew + weight * prior.whenNew()) / Math.max(aged + weight, 1),
                    loss);
        }
    }
}
