package worthsaving.intake;

import java.util.List;
import java.util.SplittableRandom;

/** Spoils texts in the ways that files get spoilt: cut, doubled, swapped, mixed with others, strewn with odd characters. */
final class Mutator {

    private static final String[] ODD = {"\0", "\ufeff", "\u202e", "\ud83d\ude97", "\"", "\"\"", ",", ";", "\t", "\n", "\r",
        "=", "-", "$", "\u20ac", "'", "999999999999999999", "-1", "NaN", "1e309", "0", "\u00e4", "\u0660", " ", "\\",
        "P0300", "no ", "?", "k", "xxx", "<html>", "%", "{", "\ud800", "VIN", "I", "\u2028"};

    private final SplittableRandom random;

    Mutator(long seed) {
        this.random = new SplittableRandom(seed);
    }

    int below(int bound) {
        return random.nextInt(bound);
    }

    <T> T any(List<T> of) {
        return of.get(random.nextInt(of.size()));
    }

    /** One to eight changes. */
    String spoil(String text, List<String> others) {
        StringBuilder s = new StringBuilder(text);
        for (int n = 1 + random.nextInt(8); n > 0; n--) {
            change(s, others);
        }
        return s.toString();
    }

    private void change(StringBuilder s, List<String> others) {
        int at = random.nextInt(s.length() + 1);
        int length = Math.min(s.length() - at, random.nextInt(12));
        switch (random.nextInt(9)) {
            case 0 -> s.delete(at, at + length);
            case 1 -> s.insert(at, ODD[random.nextInt(ODD.length)]);
            case 2 -> s.insert(at, s.substring(at, at + length));
            case 3 -> s.replace(at, at + Math.min(1, length), Character.toString(random.nextInt(1, 0x300)));
            case 4 -> s.setLength(at);
            case 5 -> {
                String other = any(others);
                int from = random.nextInt(other.length() + 1);
                s.insert(at, other, from, Math.min(other.length(), from + random.nextInt(80)));
            }
            case 6 -> s.insert(at, ODD[random.nextInt(ODD.length)].repeat(1 + random.nextInt(200)));
            case 7 -> s.replace(at, at + length, s.substring(at, at + length).toUpperCase(java.util.Locale.ROOT));
            default -> s.reverse();
        }
    }
}
