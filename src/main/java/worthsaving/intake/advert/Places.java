package worthsaving.intake.advert;

import java.util.HashMap;
import java.util.HashSet;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** States, provinces and well-known places. */
final class Places {

    /**
     * @param region code of the most usual region, or empty
     * @param country ISO 3166 code
     */
    record Place(String name, String region, String country) {}

    private final Map<String, Place> regionsByName = new HashMap<>();
    private final Map<String, Place> regionsByCode = new HashMap<>();
    private final Map<String, Place> places = new HashMap<>();
    private final Set<String> words = new HashSet<>();

    private static String key(String name) {
        return name.toLowerCase(Locale.ROOT).replaceAll("[^\\p{L} ]", "");
    }

    void addRegion(Place region) {
        regionsByName.put(key(region.name()), region);
        regionsByCode.put(region.region().toLowerCase(Locale.ROOT), region);
        words.addAll(Set.of(key(region.name()).split(" ")));
    }

    void addPlace(Place place) {
        places.putIfAbsent(key(place.name()), place);
        for (String word : key(place.name()).split(" ")) {
            words.add(word);
        }
    }

    Optional<Place> regionByName(String words) {
        return Optional.ofNullable(regionsByName.get(words));
    }

    Optional<Place> regionByCode(String code) {
        return Optional.ofNullable(regionsByCode.get(code));
    }

    Optional<Place> place(String words) {
        return Optional.ofNullable(places.get(words));
    }

    Set<String> words() {
        return Set.copyOf(words);
    }
}
