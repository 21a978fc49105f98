package worthsaving.valuation;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;

/** Builds the parts of a price model from JSON; any gap is an IllegalArgumentException that names it. */
final class ModelParts {

    private ModelParts() {}

    static PriceModel model(JsonNode root) {
        List<Map<String, Integer>> words = codes(root);
        if (words.size() != WordField.ALL.size()) {
            throw new IllegalArgumentException("it has " + words.size() + " lists of words");
        }
        Encoder encoder = new Encoder(levels(need(root, "makes")), levels(need(root, "models")), words, features(root));
        HedonicDesign design = HedonicDesign.named(words(need(root, "columns")));
        double[] coefficients = numbers(need(root, "coefficients"), design.width());
        GaussianProcess process = root.has("process") ? ProcessJson.read(need(root, "process")) : GaussianProcess.NONE;
        double[] weights = numbers(
                need(root, "weights"), process.fitted() ? PointModel.CANDIDATES : PointModel.PROCESS);
        PointModel point = new PointModel(
                encoder,
                new Hedonic(design, coefficients),
                numbers(need(root, "center"), 1)[0],
                Ensemble.ALL.stream().map(e -> trees(need(root, e.key()), encoder.width())).toList(),
                process,
                Arrays.copyOf(weights, PointModel.CANDIDATES));
        double[] guard = numbers(need(root, "guard"), 5);
        return new PriceModel(
                point,
                spread(need(root, "spread"), encoder.width() + 1),
                new Guard(guard[0], guard[1], guard[2], guard[3], guard[4]),
                typical(need(root, "typical")),
                usual(need(root, "usual")),
                CardJson.read(need(root, "card")));
    }

    private static Spread spread(JsonNode node, int width) {
        double[] edges = numbers(need(node, "edges"), -1);
        List<double[]> ranks = new ArrayList<>();
        need(node, "ranks").forEach(band -> ranks.add(numbers(band, Spread.LEVELS.length)));
        if (ranks.size() != edges.length + 1) {
            throw new IllegalArgumentException("it has " + ranks.size() + " price bands but " + edges.length + " edges");
        }
        return new Spread(
                trees(need(node, "down"), width),
                trees(need(node, "up"), width),
                edges,
                ranks.toArray(double[][]::new));
    }

    private static CarFacts typical(JsonNode node) {
        List<String> w = words(need(node, "words"));
        double[] n = numbers(need(node, "numbers"), 8);
        SortedMap<String, String> features = new TreeMap<>();
        node.path("features").properties().forEach(e -> features.put(e.getKey(), e.getValue().asText()));
        return new CarFacts(
                w.get(0), w.get(1), n[0], n[1], n[2], w.get(2), n[3], n[4], n[5], w.get(3), w.get(4), w.get(5), w.get(6),
                n[6], n[7], w.get(7), features);
    }

    private static UsualFacts usual(JsonNode node) {
        SortedMap<String, UsualFacts.Usual> usual = new TreeMap<>();
        node.properties().forEach(entry -> {
            JsonNode list = entry.getValue();
            double[] n = numbers(list.path(3), 3);
            usual.put(entry.getKey(), new UsualFacts.Usual(
                    list.path(0).asText(), list.path(1).asText(), list.path(2).asText(), n[0], n[1], n[2]));
        });
        if (!usual.containsKey("")) {
            throw new IllegalArgumentException("the usual facts of all cars are missing");
        }
        return new UsualFacts(usual);
    }

    /** Levels of further columns; a model of a table without any names none. */
    private static SortedMap<String, SortedMap<String, Encoder.Level>> features(JsonNode root) {
        SortedMap<String, SortedMap<String, Encoder.Level>> features = new TreeMap<>();
        root.path("features").properties().forEach(e -> features.put(e.getKey(), levels(e.getValue())));
        return features;
    }

    private static SortedMap<String, Encoder.Level> levels(JsonNode node) {
        SortedMap<String, Encoder.Level> levels = new TreeMap<>();
        node.properties().forEach(entry -> {
            double[] n = numbers(entry.getValue(), 4);
            levels.put(entry.getKey(), new Encoder.Level(n[0], n[1], n[2], n[3]));
        });
        return levels;
    }

    private static TreeEnsemble trees(JsonNode node, int features) {
        JsonNode shapes = need(node, "shape");
        JsonNode values = need(node, "values");
        int[] shape = new int[shapes.size()];
        float[] value = new float[values.size()];
        for (int i = 0; i < shape.length; i++) {
            shape[i] = shapes.get(i).asInt(Integer.MIN_VALUE);
        }
        for (int i = 0; i < value.length; i++) {
            value[i] = values.get(i).isNumber() ? values.get(i).floatValue() : Float.NaN;
        }
        List<long[]> sets = new ArrayList<>();
        need(node, "sets").forEach(set -> sets.add(Numerals.set(set.asText())));
        return new TreeEnsemble(shape, value, sets.toArray(long[][]::new), features);
    }

    static JsonNode need(JsonNode node, String field) {
        JsonNode value = node.get(field);
        if (value == null || value.isNull()) {
            throw new IllegalArgumentException("the part '" + field + "' is missing");
        }
        return value;
    }

    /** The part "words": for each list the words with their places as codes. */
    static List<Map<String, Integer>> codes(JsonNode node) {
        List<Map<String, Integer>> all = new ArrayList<>();
        for (JsonNode list : need(node, "words")) {
            Map<String, Integer> codes = new LinkedHashMap<>();
            list.forEach(word -> codes.put(word.asText(), codes.size()));
            all.add(codes);
        }
        return all;
    }

    static List<String> words(JsonNode node) {
        List<String> words = new ArrayList<>();
        node.forEach(word -> words.add(word.asText()));
        return words;
    }

    /** @param count numbers there must be, or -1 */
    static double[] numbers(JsonNode node, int count) {
        if (count >= 0 && node.size() != count) {
            throw new IllegalArgumentException("a list has " + node.size() + " numbers instead of " + count);
        }
        double[] numbers = new double[node.size()];
        for (int i = 0; i < numbers.length; i++) {
            JsonNode n = node.get(i);
            if (!n.isNumber() && !n.isNull()) {
                throw new IllegalArgumentException("'" + n + "' stands where a number should");
            }
            numbers[i] = n.isNull() ? Double.NaN : n.doubleValue();
        }
        return numbers;
    }

    static List<String> inOrder(Map<String, Integer> places) {
        List<String> words = new ArrayList<>(places.keySet());
        words.sort((a, b) -> Integer.compare(places.get(a), places.get(b)));
        return words;
    }
}
