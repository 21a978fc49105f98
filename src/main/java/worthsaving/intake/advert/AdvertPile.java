package worthsaving.intake.advert;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Takes a text apart that holds several adverts. What parts them is looked for in this order: lines that are a rule
 * ("---", "=====", "* * *"); lines numbered 1, 2, 3; two blank lines or more; single blank lines, or plain line
 * ends, when each piece names a car and its year. A text that shows none of these is one advert.
 */
public final class AdvertPile {

    /** Pieces beyond this many are not told apart. */
    public static final int MOST_ADVERTS = 2_000;

    private static final Pattern RULER = Pattern.compile("(?m)^[ \\t]*(?:([-=_~*#+•])(?:[ \\t]*\\1){2,}|[─━—–]{2,})[ \\t]*$");
    private static final Pattern NUMBERED =
            Pattern.compile("(?m)^[ \\t]*(?:(?:ad|advert|lot|no|run|item)\\b[ .#:]*)?[#(\\[]?(\\d{1,4})[.):\\]](?=\\s)[ \\t]*",
                    Pattern.CASE_INSENSITIVE);
    private static final Pattern BLANK_RUN = Pattern.compile("\\n[ \\t]*(?:\\n[ \\t]*){2,}");
    private static final Pattern BLANK = Pattern.compile("\\n[ \\t]*\\n\\s*");
    private static final Pattern LINE = Pattern.compile("\\n");

    private final AdvertReader reader;

    public AdvertPile(AdvertReader reader) {
        this.reader = reader;
    }

    /**
     * @param text one advert or several
     * @return at least one piece, unless the text is blank
     */
    public List<String> split(String text, LocalDate on) {
        String plain = text.replace("\r\n", "\n").replace('\r', '\n').replace('\f', '\n').strip();
        Predicate<List<String>> always = parts -> true;
        Predicate<List<String>> eachNamesCar = parts -> parts.stream().allMatch(p -> namesCar(p, on));
        return tried(parts(plain, RULER), always)
                .or(() -> tried(numbered(plain), always))
                .or(() -> tried(parts(plain, BLANK_RUN), parts -> parts.stream().anyMatch(p -> namesCar(p, on))))
                .or(() -> tried(parts(plain, BLANK), eachNamesCar))
                .or(() -> tried(parts(plain, LINE), eachNamesCar))
                .orElseGet(() -> plain.isEmpty() ? List.of() : List.of(plain));
    }

    private boolean namesCar(String text, LocalDate on) {
        if (text.length() > AdvertReader.MOST_CHARACTERS) {
            return false;
        }
        CarReading car = reader.read(text, on).car();
        return car.year().isPresent() && car.make().isPresent();
    }

    private static Optional<List<String>> tried(List<String> parts, Predicate<List<String>> fits) {
        boolean several = parts.size() > 1 && parts.size() <= MOST_ADVERTS;
        return several && fits.test(parts) ? Optional.of(parts) : Optional.empty();
    }

    private static List<String> parts(String text, Pattern between) {
        List<String> parts = new ArrayList<>();
        for (String part : between.split(text, MOST_ADVERTS + 2)) {
            if (!part.isBlank()) {
                parts.add(part.strip());
            }
        }
        return parts;
    }

    /** Pieces that begin with the numbers n, n + 1, n + 2; anything before the first is a heading. */
    private static List<String> numbered(String text) {
        List<String> parts = new ArrayList<>();
        Matcher m = NUMBERED.matcher(text);
        int expected = -1;
        int from = -1;
        while (m.find() && parts.size() <= MOST_ADVERTS) {
            int number = Integer.parseInt(m.group(1));
            if (from >= 0 && number != expected) {
                return List.of();
            }
            if (from >= 0) {
                parts.add(text.substring(from, m.start()).strip());
            }
            from = m.end();
            expected = number + 1;
        }
        if (from >= 0) {
            parts.add(text.substring(from).strip());
        }
        parts.removeIf(String::isBlank);
        return parts;
    }
}
