package worthsaving.intake.advert;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** Cuts an advert into tokens in one pass; every character belongs to one token or to a gap. */
final class Lexer {

    private static final String SOFT = " \t,/&+:'\"`’‘“”~#%=_-<>→^@\\";

    private final String text;
    private final List<Token> tokens = new ArrayList<>();
    private int gapStart;
    private int clause;
    private int segment;

    private Lexer(String text) {
        this.text = text;
    }

    static List<Token> cut(String text) {
        return new Lexer(text).run();
    }

    private List<Token> run() {
        int i = 0;
        while (i < text.length()) {
            char c = text.charAt(i);
            if (isSign(c)) {
                add(Token.Kind.SIGN, i, i + 1);
                i++;
            } else if (Character.isLetterOrDigit(c)) {
                i = word(i);
            } else {
                i++;
            }
        }
        return List.copyOf(tokens);
    }

    static boolean isSign(char c) {
        return c == '$' || c == '£' || c == '€';
    }

    private int word(int from) {
        boolean digits = digitAt(from);
        boolean letters = false;
        int i = from;
        while (i < text.length()) {
            char c = text.charAt(i);
            boolean digit = c >= '0' && c <= '9';
            if (digit) {
                digits = true;
            } else if (Character.isLetterOrDigit(c)) {
                if (digits && !letters && startsWordAfterYear(from, i)) {
                    break;
                }
                letters = true;
            } else if (!insideNumber(i, letters) && !insideWord(i)) {
                break;
            }
            i++;
        }
        Token.Kind kind = !letters ? Token.Kind.NUMBER : digits ? Token.Kind.MIXED : Token.Kind.WORD;
        add(kind, from, i);
        return i;
    }

    /** "2011chevy" is a year and a name; "2500hd" and "1999cc" are one word. */
    private boolean startsWordAfterYear(int from, int i) {
        if (i - from != 4 || !(text.startsWith("19", from) || text.startsWith("20", from))) {
            return false;
        }
        int letters = 0;
        while (i + letters < text.length() && Character.isLetter(text.charAt(i + letters))) {
            letters++;
        }
        return letters >= 3 && !text.startsWith("mil", i) && !text.startsWith("xxx", i);
    }

    private boolean insideNumber(int i, boolean letters) {
        char c = text.charAt(i);
        if (c == ',' && !letters && maskedGroup(i + 1)) {
            return true;
        }
        if (c == '*' && !letters) {
            return stars(i);
        }
        return (c == ',' || c == '.') && !letters && digitAt(i - 1) && digitAt(i + 1)
                && (c == '.' || group(i + 1) || noughts(i + 1));
    }

    private boolean group(int i) {
        return digitAt(i) && digitAt(i + 1) && digitAt(i + 2) && !digitAt(i + 3);
    }

    /** "2,3oo": letters typed for noughts. */
    private boolean noughts(int i) {
        return i + 2 < text.length() && digitAt(i) && (text.charAt(i + 1) | 32) == 'o' && (text.charAt(i + 2) | 32) == 'o'
                && (i + 3 >= text.length() || !Character.isLetterOrDigit(text.charAt(i + 3)));
    }

    /** "143***": digits hidden behind stars. */
    private boolean stars(int i) {
        int from = i;
        while (from > 0 && text.charAt(from - 1) == '*') {
            from--;
        }
        int to = i;
        while (to + 1 < text.length() && text.charAt(to + 1) == '*') {
            to++;
        }
        return to - from >= 1 && to - from <= 2 && digitAt(from - 1) && digitAt(from - 2);
    }

    private boolean maskedGroup(int i) {
        int x = 0;
        for (int k = i; k < i + 3 && k < text.length(); k++) {
            char c = Character.toLowerCase(text.charAt(k));
            if (c != 'x' && !digitAt(k)) {
                return false;
            }
            x += c == 'x' ? 1 : 0;
        }
        return x >= 2 && i + 2 < text.length();
    }

    private boolean insideWord(int i) {
        char c = text.charAt(i);
        if (c == '/') {
            return airConditioning(i);
        }
        return (c == '\'' || c == '’' || c == '`') && i > 0 && Character.isLetter(text.charAt(i - 1))
                && i + 1 < text.length() && Character.isLetter(text.charAt(i + 1));
    }

    /** "A/C" is one word. */
    private boolean airConditioning(int i) {
        return i > 0 && i + 1 < text.length() && (text.charAt(i - 1) | 32) == 'a' && (text.charAt(i + 1) | 32) == 'c'
                && (i < 2 || !Character.isLetterOrDigit(text.charAt(i - 2)))
                && (i + 2 >= text.length() || !Character.isLetterOrDigit(text.charAt(i + 2)));
    }

    private boolean digitAt(int i) {
        return i >= 0 && i < text.length() && text.charAt(i) >= '0' && text.charAt(i) <= '9';
    }

    private void add(Token.Kind kind, int start, int end) {
        String gap = text.substring(gapStart, start);
        if (!tokens.isEmpty()) {
            if (parts(gap)) {
                clause++;
                segment++;
            } else if (gap.indexOf(',') >= 0) {
                segment++;
            }
        }
        String word = text.substring(start, end).replace("'", "").replace("’", "").replace("`", "")
                .replace("/", "").replace('*', 'x')
                .toLowerCase(Locale.ROOT);
        tokens.add(new Token(kind, word, start, end, gap, clause, segment));
        gapStart = end;
    }

    /** One word alone before a dash is a label: "Title - lost". */
    private boolean labels() {
        int last = tokens.size() - 1;
        return last >= 0 && tokens.get(last).kind() == Token.Kind.WORD
                && (last == 0 || tokens.get(last - 1).clause() != tokens.get(last).clause());
    }

    private boolean parts(String gap) {
        if (gap.contains("->") || gap.contains("→")) {
            return false;
        }
        if (Rx.is(gap, "\\s?[-–]\\s") && labels()) {
            return false;
        }
        if (Rx.is(gap, "(?s).*\\s[-–—]+\\s?.*") || gap.contains("--") || gap.contains("—")) {
            return true;
        }
        if (gap.equals(".") && gapStart > 0 && gapStart + 1 < text.length()
                && Character.isLetter(text.charAt(gapStart - 1))
                        && tokens.get(tokens.size() - 1).text().length() == 1) {
            return false;
        }
        for (int i = 0; i < gap.length(); i++) {
            if (SOFT.indexOf(gap.charAt(i)) < 0) {
                return true;
            }
        }
        return false;
    }
}
