package worthsaving.intake;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import worthsaving.vehicle.Observation;
import worthsaving.vehicle.Observation.Sight;

/**
 * Trouble codes found in any text: a list, a scan tool's report, a note. A word such as "pending" counts for the codes
 * of its line, or as a heading for the lines below it until a blank line or the next heading. The letter O in place of
 * a nought is read as a nought and noted.
 *
 * @param codes each code once, in the order of the text; where it stands several times the gravest status counts
 * @param notes what the reader wants said
 */
public record ScanReport(List<ReadCode> codes, List<String> notes) {

    /** Longer reports are read up to here. */
    public static final int MOST_CHARACTERS = 1_000_000;

    private static final Pattern CODE =
            Pattern.compile("(?<![A-Za-z0-9])([PCBUpcbu])([0-3Oo][0-9A-Fa-fOo]{3})(?:[-:][0-9A-Fa-f]{2})?(?![A-Za-z0-9])");
    private static final Map<Pattern, ReadCode.Status> WORDS = words();
    private static final List<ReadCode.Status> GRAVEST_FIRST = List.of(ReadCode.Status.PERMANENT,
            ReadCode.Status.STORED, ReadCode.Status.PENDING, ReadCode.Status.HISTORY, ReadCode.Status.PASSED);

    public ScanReport {
        codes = List.copyOf(codes);
        notes = List.copyOf(notes);
    }

    private record Word(int at, ReadCode.Status status) {}

    private static Map<Pattern, ReadCode.Status> words() {
        Map<Pattern, ReadCode.Status> words = new LinkedHashMap<>();
        words.put(word("pending|unconfirmed|maturing|intermittent|sporadi\\w*"), ReadCode.Status.PENDING);
        words.put(word("permanent\\w*|pdtc"), ReadCode.Status.PERMANENT);
        words.put(word("histor\\w*|previous\\w*|past|old|inactive|not (?:current|present|active)|passive?|cleared|erased"
                + "|gespeichert|nicht aktiv"), ReadCode.Status.HISTORY);
        words.put(word("passed|test ok|no fault"), ReadCode.Status.PASSED);
        words.put(word("stored|confirmed|current\\w*|active|present|mil on|aktiv"), ReadCode.Status.STORED);
        return words;
    }

    private static Pattern word(String choices) {
        return Pattern.compile("\\b(?:" + choices + ")\\b", Pattern.CASE_INSENSITIVE);
    }

    /** Reads a text; never fails on one. */
    public static ScanReport read(String text) {
        Reading reading = new Reading();
        String cut = text.length() > MOST_CHARACTERS ? text.substring(0, MOST_CHARACTERS) : text;
        int number = 0;
        for (String line : cut.split("\\R", -1)) {
            reading.line(line, ++number);
        }
        if (cut.length() < text.length()) {
            reading.notes.add("only the first " + MOST_CHARACTERS + " of " + text.length() + " characters were read");
        }
        return new ScanReport(List.copyOf(reading.codes.values()), reading.notes);
    }

    /** The findings that the codes stand for, each once; the surer of two codes counts. */
    public List<Observation> observations(Vocabulary vocabulary) {
        Map<String, Sight> sights = sights(codes, vocabulary);
        return sights.entrySet().stream()
                .map(e -> new Observation(e.getKey(), e.getValue(), Observation.Witness.OWN_EYES)).toList();
    }

    static Map<String, Sight> sights(List<ReadCode> codes, Vocabulary vocabulary) {
        Map<String, Sight> sights = new LinkedHashMap<>();
        for (ReadCode read : codes) {
            for (String id : vocabulary.findings(read.code())) {
                if (read.status() != ReadCode.Status.PASSED) {
                    sights.merge(id, read.status().sight(), (a, b) -> a == Sight.PRESENT ? a : b);
                }
            }
        }
        return sights;
    }

    private static final class Reading {
        private final Map<String, ReadCode> codes = new LinkedHashMap<>();
        private final List<String> notes = new ArrayList<>();
        private ReadCode.Status heading = ReadCode.Status.STORED;

        private void line(String line, int number) {
            List<Word> words = statusWords(line);
            Matcher m = CODE.matcher(line);
            int first = -1;
            while (m.find()) {
                String digits = m.group(2).toUpperCase(Locale.ROOT);
                Optional<TroubleCode> code = TroubleCode.parse(m.group(1) + digits.replace('O', '0'));
                if (code.isPresent()) {
                    first = first < 0 ? m.start() : first;
                    add(new ReadCode(code.get(), nearest(words, m.start(), first).orElse(heading), number));
                    if (digits.indexOf('O') >= 0) {
                        notes.add("line " + number + ": '" + m.group() + "' was read as " + code.get());
                    }
                }
            }
            if (line.isBlank()) {
                heading = ReadCode.Status.STORED;
            } else if (first < 0 && !words.isEmpty()) {
                heading = words.get(0).status();
            }
        }

        private void add(ReadCode code) {
            codes.merge(code.code().text(), code, (a, b) ->
                    GRAVEST_FIRST.indexOf(b.status()) < GRAVEST_FIRST.indexOf(a.status()) ? b : a);
        }
    }

    /** Where a line begins with a status it heads the codes behind it, otherwise each status follows its code. */
    private static Optional<ReadCode.Status> nearest(List<Word> words, int at, int firstCode) {
        boolean heads = !words.isEmpty() && words.get(0).at() < firstCode;
        return heads
                ? words.stream().filter(w -> w.at() < at).reduce((a, b) -> b).map(Word::status)
                : words.stream().filter(w -> w.at() > at).findFirst().map(Word::status);
    }

    private static List<Word> statusWords(String line) {
        List<Word> found = new ArrayList<>();
        boolean[] taken = new boolean[line.length()];
        WORDS.forEach((pattern, status) -> {
            Matcher m = pattern.matcher(line);
            while (m.find()) {
                if (!taken[m.start()]) {
                    found.add(new Word(m.start(), status));
                }
                for (int i = m.start(); i < m.end(); i++) {
                    taken[i] = true;
                }
            }
        });
        found.sort(Comparator.comparingInt(Word::at));
        return found;
    }
}
