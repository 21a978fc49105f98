package worthsaving.intake.advert;

import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * Puts words into the vocabulary's spelling: listed abbreviations first, then slips of one letter (left out, added,
 * wrong or swapped with its neighbour) in words of six letters or more that begin alike.
 */
final class Spelling {

    private static final int SHORTEST = 6;
    private static final int SHORTEST_PREFIX = 5;

    private final Map<String, List<String>> listed;
    private final Set<String> known;
    private final Set<String> phraseWords;
    private final Set<String> prefixes;
    private final Nearby nearby;

    /**
     * @param phraseWords words to be recognised in slips
     * @param prefixes beginnings of words that phrases take with any ending: such a word is no slip
     * @param names further words to be left as they are
     */
    Spelling(Map<String, List<String>> listed, Set<String> phraseWords, Set<String> prefixes, Set<String> names) {
        this.listed = new HashMap<>(listed);
        this.phraseWords = Set.copyOf(phraseWords);
        this.prefixes = Set.copyOf(prefixes);
        this.known = new HashSet<>(phraseWords);
        this.known.addAll(listed.keySet());
        this.nearby = new Nearby(known.stream().filter(w -> w.length() >= SHORTEST).toList());
        this.known.addAll(names);
    }

    boolean knows(String word) {
        return known.contains(word);
    }

    /** True for words of phrases, false for mere names. */
    boolean means(String word) {
        return phraseWords.contains(word) || listed.containsKey(word);
    }

    List<String> read(String word) {
        List<String> means = listed.get(word);
        if (means != null) {
            return means;
        }
        if (known.contains(word) || word.length() < SHORTEST || begun(word)) {
            return List.of(word);
        }
        String near = nearby.find(word, 1);
        if (near == null || near.charAt(0) != word.charAt(0)) {
            return List.of(word);
        }
        return listed.getOrDefault(near, List.of(near));
    }

    private boolean begun(String word) {
        for (int end = SHORTEST_PREFIX; end <= word.length(); end++) {
            if (prefixes.contains(word.substring(0, end))) {
                return true;
            }
        }
        return false;
    }
}
