package worthsaving.valuation;

import java.util.Collection;
import java.util.Comparator;
import java.util.Optional;
import java.util.function.ToLongFunction;

/**
 * Finds a known model behind a name with more words or other signs: "civic lx sedan" is a "civic", "F150 XL" an
 * "f-150". The longest run of leading words that a known name spells wins; of names spelt alike, the commoner.
 */
final class ModelNames {

    private ModelNames() {}

    /**
     * @param known names of one make's models, in lower case
     * @param rows how common each is
     */
    static Optional<String> behind(String stated, Collection<String> known, ToLongFunction<String> rows) {
        String[] words = stated.split("[^a-z0-9]+");
        for (int count = words.length; count > 0; count--) {
            String spelt = String.join("", java.util.Arrays.asList(words).subList(0, count));
            Optional<String> found = known.stream()
                    .filter(name -> !spelt.isEmpty() && plain(name).equals(spelt))
                    .max(Comparator.comparingLong(rows).thenComparing(Comparator.reverseOrder()));
            if (found.isPresent()) {
                return found;
            }
        }
        return Optional.empty();
    }

    private static String plain(String name) {
        return name.replaceAll("[^a-z0-9]", "");
    }
}
