package worthsaving.intake.advert;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** Makes and models by every name they go by; names are compared without capitals, spaces and hyphens. */
final class ModelIndex {

    private static final int SHORTEST_FUZZY = 5;
    private static final int TWO_SLIPS_FROM = 8;

    private final Map<String, String> makes = new HashMap<>();
    private final Map<String, List<Model>> models = new HashMap<>();
    private Nearby nearMakes = new Nearby(List.of());
    private Nearby nearModels = new Nearby(List.of());

    static String bare(String name) {
        StringBuilder bare = new StringBuilder(name.length());
        String lower = name.toLowerCase(Locale.ROOT);
        for (int i = 0; i < lower.length(); i++) {
            char c = lower.charAt(i);
            if (Character.isLetter(c) || c >= '0' && c <= '9') {
                bare.append(c);
            }
        }
        return bare.toString();
    }

    void addMake(String make, List<String> aliases) {
        makes.put(bare(make), make);
        aliases.forEach(alias -> makes.put(bare(alias), make));
    }

    void addModel(Model model, List<String> aliases) {
        if (!makes.containsValue(model.make())) {
            throw new IllegalArgumentException("make '" + model.make() + "' is not in makes.csv; add it there");
        }
        List<String> names = new ArrayList<>(aliases);
        names.add(model.name());
        for (String name : names) {
            String key = bare(name);
            if (key.isEmpty()) {
                throw new IllegalArgumentException("the name '" + name + "' holds no letter or digit");
            }
            List<Model> same = models.computeIfAbsent(key, k -> new ArrayList<>(1));
            if (!same.contains(model)) {
                same.add(model);
            }
        }
    }

    void ready() {
        nearMakes = new Nearby(makes.keySet().stream().filter(ModelIndex::fuzzy).toList());
        nearModels = new Nearby(models.keySet().stream().filter(ModelIndex::fuzzy).toList());
    }

    private static boolean fuzzy(String name) {
        return name.length() >= SHORTEST_FUZZY && name.chars().allMatch(Character::isLetter);
    }

    Optional<String> make(String name) {
        return Optional.ofNullable(makes.get(name));
    }

    List<Model> models(String name) {
        return models.getOrDefault(name, List.of());
    }

    Optional<String> makeLike(String word) {
        return like(nearMakes, word).map(makes::get);
    }

    List<Model> modelsLike(String word) {
        return like(nearModels, word).map(models::get).orElse(List.of());
    }

    private static Optional<String> like(Nearby nearby, String word) {
        if (!fuzzy(word)) {
            return Optional.empty();
        }
        return Optional.ofNullable(nearby.find(word, word.length() >= TWO_SLIPS_FROM ? 2 : 1))
                .filter(name -> name.charAt(0) == word.charAt(0));
    }

    /** Single words among the names. */
    Set<String> words() {
        Set<String> words = new HashSet<>(makes.keySet());
        words.addAll(models.keySet());
        return words;
    }
}
