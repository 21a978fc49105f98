package worthsaving.intake.advert;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;

/**
 * A phrase to look for: words in order. {@code a/b} either word, {@code word*} any ending, {@code word?} may be
 * left out, {@code {name}} a word of a class, {@code ..} up to three other words, {@code ...} up
 * to eight. A phrase stays within one clause, and its neighbouring words within one stretch between commas.
 */
final class Phrase {

    private static final int GAP = 3;
    private static final int LONG_GAP = 8;

    private record Element(Set<String> exact, List<String> prefixes, boolean optional, int gapBefore) {

        boolean accepts(String word) {
            if (exact.contains(word)) {
                return true;
            }
            for (String prefix : prefixes) {
                if (word.startsWith(prefix)) {
                    return true;
                }
            }
            return false;
        }
    }

    private final String kind;
    private final String means;
    private final boolean framed;
    private final List<Element> elements;

    private Phrase(String kind, String means, boolean framed, List<Element> elements) {
        this.framed = framed;
        this.kind = kind;
        this.means = means;
        this.elements = List.copyOf(elements);
    }

    /**
     * @param classes sets of words by name
     * @param spelling single written words and what they stand for; a phrase may use either
     * @throws IllegalArgumentException for an unknown class or an empty phrase
     */
    static Phrase parse(
            String kind, String means, String text, Map<String, List<String>> classes, Map<String,
                    List<String>> spelling) {
        List<Element> elements = new ArrayList<>();
        int gap = 0;
        for (String part : text.strip().split("\\s+")) {
            if (part.equals("..") || part.equals("...")) {
                gap = part.length() == 2 ? GAP : LONG_GAP;
                continue;
            }
            boolean optional = part.endsWith("?") && part.length() > 1;
            String body = optional ? part.substring(0, part.length() - 1) : part;
            Set<String> exact = new TreeSet<>();
            List<String> prefixes = new ArrayList<>();
            List<String> choices = body.startsWith("{") ? wordsOf(body, classes) : List.of(body.split("/"));
            List<String> tail = List.of();
            for (String choice : choices) {
                if (choice.isEmpty()) {
                    throw new IllegalArgumentException("a word is missing in '" + text + "'");
                }
                if (choice.endsWith("*")) {
                    prefixes.add(choice.substring(0, choice.length() - 1));
                } else {
                    List<String> means1 = spelling.getOrDefault(choice, List.of(choice));
                    exact.add(means1.get(0));
                    tail = choices.size() == 1 ? means1.subList(1, means1.size()) : List.of();
                }
            }
            elements.add(new Element(Set.copyOf(exact), List.copyOf(prefixes), optional, gap));
            tail.forEach(word -> elements.add(new Element(Set.of(word), List.of(), optional, 0)));
            gap = 0;
        }
        if (elements.stream().allMatch(Element::optional)) {
            throw new IllegalArgumentException("the phrase '" + text + "' has no word that must be there");
        }
        return new Phrase(kind, means, false, elements);
    }

    private static List<String> wordsOf(String body, Map<String, List<String>> classes) {
        List<String> words = body.endsWith("}") ? classes.get(body.substring(1, body.length() - 1)) : null;
        if (words == null) {
            throw new IllegalArgumentException("no class of words named '" + body + "'");
        }
        return words;
    }

    String kind() {
        return kind;
    }

    String means() {
        return means;
    }

    /** The same phrase, yielding to those written out. */
    Phrase asFramed() {
        return new Phrase(kind, means, true, elements);
    }

    boolean framed() {
        return framed;
    }

    /** Words with which a match can begin. */
    Set<String> firstWords() {
        Set<String> words = new TreeSet<>();
        for (Element element : elements) {
            words.addAll(element.exact);
            if (!element.optional) {
                break;
            }
        }
        return words;
    }

    /** Beginnings of words with which a match can begin. */
    List<String> firstPrefixes() {
        List<String> prefixes = new ArrayList<>();
        for (Element element : elements) {
            prefixes.addAll(element.prefixes);
            if (!element.optional) {
                break;
            }
        }
        return prefixes;
    }

    /** Every full word that the phrase names. */
    Set<String> vocabulary() {
        Set<String> words = new TreeSet<>();
        elements.forEach(element -> words.addAll(element.exact));
        return words;
    }

    /** Beginnings of words that the phrase accepts with any ending. */
    List<String> prefixes() {
        return elements.stream().flatMap(element -> element.prefixes.stream()).toList();
    }

    /** Positions of the words matched when the phrase begins at {@code from}, or null. */
    int[] match(List<Words.Word> words, int from) {
        int[] places = new int[elements.size()];
        int count = match(words, from, 0, places, 0);
        return count <= 0 ? null : Arrays.copyOf(places, count);
    }

    private int match(List<Words.Word> words, int at, int element, int[] places, int matched) {
        if (element == elements.size()) {
            return matched;
        }
        Element wanted = elements.get(element);
        for (int i = at; i <= at + wanted.gapBefore && i < words.size(); i++) {
            if (matched > 0 && parted(words, places[matched - 1], i, wanted.gapBefore > 0)) {
                break;
            }
            if (wanted.accepts(words.get(i).text())) {
                places[matched] = i;
                int count = match(words, i + 1, element + 1, places, matched + 1);
                if (count > 0) {
                    return count;
                }
            }
        }
        return wanted.optional ? match(words, at, element + 1, places, matched) : -1;
    }

    private static boolean parted(List<Words.Word> words, int before, int at, boolean gap) {
        Token a = words.get(before).token();
        Token b = words.get(at).token();
        return a.clause() != b.clause() || !gap && a.segment() != b.segment();
    }
}
