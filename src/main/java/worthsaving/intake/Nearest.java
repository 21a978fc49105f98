package worthsaving.intake;

import java.util.Collection;
import java.util.Comparator;
import java.util.Locale;
import java.util.Optional;

/** The word that was probably meant. */
final class Nearest {

    private static final int LONGEST = 60;

    private Nearest() {}

    /**
     * The candidate with the smallest edit distance (optimal string alignment: insert, delete, replace,
     * swap of neighbours), if it is near enough to be a slip: at most a third of the word, and at most 3.
     * Ties go to the first in alphabetical order.
     */
    static Optional<String> to(String word, Collection<String> candidates) {
        if (word.length() > LONGEST) {
            return Optional.empty();
        }
        String lower = word.toLowerCase(Locale.ROOT);
        int most = Math.min(3, Math.max(1, word.length() / 3));
        return candidates.stream()
                .filter(c -> Math.abs(c.length() - word.length()) <= most)
                .filter(c -> distance(lower, c.toLowerCase(Locale.ROOT)) <= most)
                .min(Comparator.<String>comparingInt(c -> distance(lower, c.toLowerCase(Locale.ROOT)))
                        .thenComparing(Comparator.naturalOrder()));
    }

    /** {@code "did you mean X?"}, or {@code otherwise} when nothing is near. */
    static String hint(String word, Collection<String> candidates, String otherwise) {
        return to(word, candidates).map(c -> "did you mean " + c + "?").orElse(otherwise);
    }

    static int distance(String a, String b) {
        int[] beforeLast = new int[b.length() + 1];
        int[] last = new int[b.length() + 1];
        int[] now = new int[b.length() + 1];
        for (int j = 0; j <= b.length(); j++) {
            last[j] = j;
        }
        for (int i = 1; i <= a.length(); i++) {
            now[0] = i;
            for (int j = 1; j <= b.length(); j++) {
                int change = a.charAt(i - 1) == b.charAt(j - 1) ? 0 : 1;
                now[j] = Math.min(Math.min(last[j] + 1, now[j - 1] + 1), last[j - 1] + change);
                boolean swapped = i > 1 && j > 1
                        && a.charAt(i - 1) == b.charAt(j - 2) && a.charAt(i - 2) == b.charAt(j - 1);
                if (swapped) {
                    now[j] = Math.min(now[j], beforeLast[j - 2] + 1);
                }
            }
            int[] spare = beforeLast;
            beforeLast = last;
            last = now;
            now = spare;
        }
        return last[b.length()];
    }
}
