package worthsaving.intake.advert;

import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;

/**
 * Finds the listed word within an edit distance of 1 or 2 of a written one. Both are indexed by what is left after
 * deleting letters, so a look-up costs a power of the word's length, not of the list's.
 * Distance: optimal string alignment (insertion, deletion, substitution, swap of neighbours).
 */
final class Nearby {

    private static final int LONGEST = 24;

    private final Map<String, List<String>> byRest = new HashMap<>();

    Nearby(Collection<String> words) {
        for (String word : new TreeSet<>(words)) {
            for (String rest : rests(word, 2)) {
                byRest.computeIfAbsent(rest, r -> new ArrayList<>(1)).add(word);
            }
        }
    }

    /** The nearest word within {@code most} edits, the first in the alphabet of equally near ones, or null. */
    String find(String written, int most) {
        if (written.length() > LONGEST) {
            return null;
        }
        String best = null;
        int bestDistance = most + 1;
        for (String rest : rests(written, most)) {
            for (String word : byRest.getOrDefault(rest, List.of())) {
                int distance = distance(written, word);
                if (distance < bestDistance || distance == bestDistance && best != null && word.compareTo(best) < 0) {
                    best = word;
                    bestDistance = distance;
                }
            }
        }
        return best;
    }

    private static Set<String> rests(String word, int deletions) {
        Set<String> all = new HashSet<>();
        all.add(word);
        Set<String> level = all;
        for (int d = 0; d < deletions; d++) {
            Set<String> next = new HashSet<>();
            for (String w : level) {
                for (int i = 0; i < w.length(); i++) {
                    next.add(w.substring(0, i) + w.substring(i + 1));
                }
            }
            all.addAll(next);
            level = next;
        }
        return all;
    }

    static int distance(String a, String b) {
        int[][] d = new int[a.length() + 1][b.length() + 1];
        for (int i = 0; i <= a.length(); i++) {
            for (int j = 0; j <= b.length(); j++) {
                if (i == 0 || j == 0) {
                    d[i][j] = i + j;
                    continue;
                }
                int change = a.charAt(i - 1) == b.charAt(j - 1) ? 0 : 1;
                d[i][j] = Math.min(d[i - 1][j - 1] + change, Math.min(d[i - 1][j], d[i][j - 1]) + 1);
                if (i > 1 && j > 1 && a.charAt(i - 1) == b.charAt(j - 2) && a.charAt(i - 2) == b.charAt(j - 1)) {
                    d[i][j] = Math.min(d[i][j], d[i - 2][j - 2] + 1);
                }
            }
        }
        return d[a.length()][b.length()];
    }
}
