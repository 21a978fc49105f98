package worthsaving.intake.advert;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Finds numbers: grouped, decimal, masked, with a unit written on, in two groups by a space, or in words. */
final class Numbers {

    private static final Pattern SUFFIXED = Pattern.compile("(\\d[\\d.,]*)([a-z]{1,6})");
    private static final Pattern MASKED = Pattern.compile("(\\d[\\d,]*)(x[x\\d,]*x|x{2,})(mi|miles|km|k)?");
    private static final Set<String> SUFFIXES = Set.of("k", "tkm", "mi", "mile", "miles", "km", "kms", "kmi", "kmiles", "kkm",
            "l", "t", "grand", "usd", "cad", "eur", "gbp", "m");
    private static final Map<String, Integer> UNITS = Map.ofEntries(Map.entry("one", 1), Map.entry("two", 2),
            Map.entry("three", 3), Map.entry("four", 4), Map.entry("five", 5), Map.entry("six", 6), Map.entry("seven",
                    7),
            Map.entry("eight", 8), Map.entry("nine", 9), Map.entry("ten", 10), Map.entry("eleven", 11),
            Map.entry("twelve", 12), Map.entry("thirteen", 13), Map.entry("fourteen", 14), Map.entry("fifteen", 15),
            Map.entry("sixteen", 16), Map.entry("seventeen", 17), Map.entry("eighteen", 18), Map.entry("nineteen", 19),
            Map.entry("twenty", 20), Map.entry("thirty", 30), Map.entry("forty", 40), Map.entry("fifty", 50),
            Map.entry("sixty", 60), Map.entry("seventy", 70), Map.entry("eighty", 80), Map.entry("ninety", 90));
    private static final Map<String, Integer> SCALES = Map.of("hundred", 100, "thousand", 1000, "grand", 1000);

    private Numbers() {}

    static List<Num> in(List<Token> tokens) {
        List<Num> found = new ArrayList<>();
        for (int i = 0; i < tokens.size(); i++) {
            Num num = spelled(tokens, i);
            if (num == null) {
                num = written(tokens, i);
            }
            if (num != null) {
                found.add(num);
                i = num.to();
            }
        }
        return found;
    }

    private static Num written(List<Token> tokens, int i) {
        Token token = tokens.get(i);
        if (token.kind() == Token.Kind.WORD || token.kind() == Token.Kind.SIGN || token.text().length() > 14) {
            return null;
        }
        if (token.kind() == Token.Kind.NUMBER) {
            if (i + 1 < tokens.size() && Rx.is(tokens.get(i + 1).text(), "x{2,3}")
                    && Rx.is(tokens.get(i + 1).gap(), "[ ,.]{1,2}") && Rx.is(token.text(), "\\d{2,3}")) {
                return new Num(i, i + 1, Double.parseDouble(token.text()) * 1000, "", true, true, false, false);
            }
            Num split = inTwoGroups(tokens, i);
            return split != null ? split : num(i, token.text(), "", false);
        }
        if (Rx.is(token.text(), "[1-9]\\d{0,2},[\\do]{3}")) {
            return num(i, token.text().replace('o', '0'), "", false);
        }
        Matcher masked = MASKED.matcher(token.text());
        if (masked.matches()) {
            String digits = (masked.group(1) + masked.group(2)).replace('x', '0');
            return num(i, digits, masked.group(3) == null ? "" : masked.group(3), true);
        }
        Matcher suffixed = SUFFIXED.matcher(token.text());
        if (suffixed.matches() && SUFFIXES.contains(suffixed.group(2))) {
            return num(i, suffixed.group(1), suffixed.group(2), false);
        }
        return null;
    }

    /**
     * "210 000": a group of up to three digits, one space, then exactly three; a unit or a sign follows, or
     * they are noughts.
     */
    private static Num inTwoGroups(List<Token> tokens, int i) {
        if (i + 1 >= tokens.size() || !Rx.is(tokens.get(i).text(), "[1-9]\\d{0,2}")) {
            return null;
        }
        Token next = tokens.get(i + 1);
        boolean group = Rx.is(next.gap(), "[ \\u00a0\\u202f\\u2009]") && Rx.is(next.text(), "\\d{3}(?:km|mi)?");
        boolean unit = i + 2 < tokens.size() && (Rx.is(tokens.get(i + 2).text(), "km|kms|mi|miles|kilomet.*")
                || tokens.get(i + 2).kind() == Token.Kind.SIGN && tokens.get(i + 2).glued());
        if (!group || !(unit || next.text().startsWith("000"))) {
            return null;
        }
        double value = Double.parseDouble(tokens.get(i).text() + next.text().substring(0, 3));
        return new Num(i, i + 1, value, next.text().substring(3), false, true, false, false);
    }

    private static Num num(int i, String digits, String suffix, boolean masked) {
        String text = digits;
        boolean grouped = false;
        if (Rx.is(text, "[1-9]\\d{0,2}(?:,\\d{3})+(?:\\.\\d{1,2})?")) {
            text = text.replace(",", "");
            grouped = true;
        } else if (Rx.is(text, "[1-9]\\d{0,2}(?:\\.\\d{3})+")) {
            text = text.replace(".", "");
            grouped = true;
        }
        if (!Rx.is(text, "\\d{1,12}(?:\\.\\d{1,6})?")) {
            return null;
        }
        boolean decimal = text.indexOf('.') >= 0 && !Rx.is(text, "\\d+\\.0+") || Rx.is(text, "\\d\\.0");
        double value = Double.parseDouble(text);
        double scaled = suffix.startsWith("k") && !suffix.startsWith("km") || suffix.equals("kmi")
                || suffix.equals("kmiles") || suffix.equals("tkm")
                || suffix.equals("grand") ? Math.rint(value * 1000) : value;
        return new Num(i, i, scaled, suffix, masked, grouped, decimal, false);
    }

    /** "four grand", "fifteen hundred", "25 hundred", "two thousand five hundred". */
    private static Num spelled(List<Token> tokens, int from) {
        double total = 0;
        double current = -1;
        boolean scale = false;
        int i = from;
        int end = -1;
        for (; i < tokens.size() && i < from + 8; i++) {
            Token token = tokens.get(i);
            if (i > from && token.segment() != tokens.get(from).segment()) {
                break;
            }
            Integer unit = UNITS.get(token.text());
            Integer times = SCALES.get(token.text());
            if (unit != null) {
                current = current < 0 ? unit : current + unit;
            } else if (times != null && current >= 0) {
                current *= times;
                scale = true;
                end = i;
                if (times == 1000) {
                    total += current;
                    current = -1;
                }
            } else if (i == from && token.kind() == Token.Kind.NUMBER && Rx.is(token.text(), "\\d{1,2}(?:\\.\\d)?")) {
                current = Double.parseDouble(token.text());
            } else {
                break;
            }
        }
        if (!scale) {
            return null;
        }
        double value = total + (current > 0 ? current : 0);
        return new Num(from, Math.max(end, i - 1), value, "", false, false, false, true);
    }
}
