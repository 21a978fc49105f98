package worthsaving.intake.advert;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** All phrases of the vocabulary, found in one pass. Longer phrases win over shorter ones of the same kind. */
final class PhraseBook {

    /** Means nothing and hides its words from every other kind but cues. */
    static final String SKIP = "skip";
    /** Hides its words from the phrases of its own kind only. */
    static final String NOTHING = "-";

    private final Map<String, List<Phrase>> byFirstWord = new HashMap<>();
    private final Map<Character, List<Map.Entry<String, Phrase>>> byPrefix = new HashMap<>();
    private final Set<String> vocabulary = new HashSet<>();
    private final Set<String> prefixes = new HashSet<>();

    PhraseBook(List<Phrase> phrases) {
        for (Phrase phrase : phrases) {
            phrase.firstWords().forEach(w -> byFirstWord.computeIfAbsent(w, k -> new ArrayList<>()).add(phrase));
            for (String prefix : phrase.firstPrefixes()) {
                byPrefix.computeIfAbsent(prefix.charAt(0), k -> new ArrayList<>()).add(Map.entry(prefix, phrase));
            }
            vocabulary.addAll(phrase.vocabulary());
            prefixes.addAll(phrase.prefixes());
        }
    }

    Set<String> vocabulary() {
        return Set.copyOf(vocabulary);
    }

    /** Beginnings of words with any ending. */
    Set<String> prefixes() {
        return Set.copyOf(prefixes);
    }

    /** Hits by kind, in the order of the text; those that mean nothing are left out. */
    Map<String, List<Hit>> find(Words words) {
        List<Hit> all = new ArrayList<>();
        for (int i = 0; i < words.size(); i++) {
            String word = words.get(i).text();
            for (Phrase phrase : byFirstWord.getOrDefault(word, List.of())) {
                add(all, phrase, words, i);
            }
            for (Map.Entry<String, Phrase> entry : byPrefix.getOrDefault(word.charAt(0), List.of())) {
                if (word.startsWith(entry.getKey())) {
                    add(all, entry.getValue(), words, i);
                }
            }
        }
        all.sort(Comparator.<Hit>comparingInt(h -> h.kind().equals(SKIP) ? 0 : 1)
                .thenComparingInt(h -> -h.places().length)
                .thenComparing(Hit::framed)
                .thenComparingInt(h -> h.last() - h.first())
                .thenComparingInt(Hit::first)
                .thenComparing(Hit::means));
        Map<String, boolean[]> taken = new HashMap<>();
        boolean[] skipped = new boolean[words.size()];
        Map<String, List<Hit>> found = new HashMap<>();
        for (Hit hit : all) {
            boolean[] own = taken.computeIfAbsent(hit.kind(), k -> new boolean[words.size()]);
            boolean cue = hit.kind().startsWith("cue:");
            if (!cue && hit.shares(skipped) || hit.shares(own)) {
                continue;
            }
            hit.take(hit.kind().equals(SKIP) ? skipped : own);
            if (!hit.means().equals(NOTHING) || hit.kind().equals(SKIP)) {
                found.computeIfAbsent(hit.kind(), k -> new ArrayList<>()).add(hit);
            }
        }
        found.values().forEach(hits -> hits.sort(Comparator.comparingInt(Hit::first)));
        return found;
    }

    private static void add(List<Hit> all, Phrase phrase, Words words, int at) {
        int[] places = phrase.match(words.list(), at);
        if (places != null) {
            all.add(new Hit(phrase.kind(), phrase.means(), phrase.framed(), places));
        }
    }
}
