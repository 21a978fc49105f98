package worthsaving.intake.advert;

import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Blanks whatever names a person: telephone numbers, e-mail addresses, links, handles and the name after
 * "ask for". Each is overwritten by stars of the same length, so positions in the text stay as they were.
 */
final class ContactFilter {

    private static final String DIGIT = "(?:\\d|zero|one|two|three|four|five|six|seven|eight|nine)";
    private static final String CUE =
            "(?:call|text|txt|phone|ph|tel|telephone|cell|mobile|whatsapp|sms|contact|number|reach me)";

    private static final Pattern[] ALWAYS = {
        ci("[\\w.+-]{1,64}@[\\w-]{1,63}(?:\\.[\\w-]{1,63}){1,4}"),
        ci("\\b[\\w.+-]{1,64}\\s?[(\\[]?\\s?\\bat\\b\\s?[)\\]]?\\s?[\\w-]{1,63}\\s?[(\\[]?\\s?\\b(?:dot)\\b\\s?[)\\]]?\\s?"
                + "(?:com|net|org|edu|ca|uk)\\b"),
        ci("\\b[\\w.+-]{1,64} at (?:gmail|yahoo|hotmail|outlook|aol|icloud|proton)\\b(?:[ .]?(?:dot)?[ .]?com)?"),
        ci("(?:https?://|www\\.)\\S{1,2000}"),
        ci("\\b[a-z0-9][a-z0-9-]{1,62}\\.(?:com|net|org|io|co\\.uk|ca|de|info|biz|me|app|ly)\\b(?:/\\S{0,2000})?"),
        ci("(?<![\\w.])@[a-z_][\\w.]{2,40}"),
        ci("(?<![\\w$£€,.])(?:\\+?1[-. ]{0,2})?\\(?[2-9]\\d{2}\\)?[-. /]{0,3}[2-9]\\d{2}[-. ]{0,3}\\d{4}(?![\\d,])"),
        ci("(?<![\\w$£€,.])\\+\\d{1,3}[-. ]?(?:\\(?\\d{1,5}\\)?[-. ]?){2,4}\\d{2,4}(?!\\d)"),
        ci("(?<![\\w$£€,.])0\\d{3,4}[- ]?\\d{3}[- ]?\\d{3,4}(?!\\d)"),
        ci("(?<![\\w$£€,.])[2-9]\\d{2}[-–.]\\d{4}(?<!00)(?![\\d,.]\\d|k\\b|\\s?(?:mi|km|obo))"),
    };
    private static final Pattern[] IF_IT_COUNTS = {
        ci(CUE + "\\b[^\\d\\n$£€.]{0,25}" + "(\\(?\\d[\\d() .-]{5,16}\\d)(?!\\d|k\\b|,\\d)"),
        ci("(?<![\\w$£€])((?:" + DIGIT + "[-. ]{0,2}){6,10}" + DIGIT + ")(?![\\w])"),
    };
    private static final Pattern NAME = Pattern.compile(
            "\\b(?:[Aa]sk for|[Cc]ontact|[Cc]all|[Tt]ext|[Mm]y name is|[Ss]peak to|ASK FOR|CALL)\\s+"
                    + "(?!(?i:me|or|if|for|only|text|call|anytime|us|after|before|and|to|with|please|today|now|the|"
                    + "no|at|any|first|my|is|messages?|more|info|from|between|number|best|day|leave)\\b)"
                    + "([A-Z][A-Za-z'’-]{1,30})");

    private ContactFilter() {}

    private static Pattern ci(String regex) {
        return Pattern.compile(regex, Pattern.CASE_INSENSITIVE);
    }

    static String blank(String text) {
        StringBuilder out = new StringBuilder(text);
        for (Pattern pattern : ALWAYS) {
            star(out, pattern.matcher(text), 0);
        }
        for (Pattern pattern : IF_IT_COUNTS) {
            Matcher m = pattern.matcher(text);
            while (m.find()) {
                if (dials(m.group(1), pattern == IF_IT_COUNTS[0])) {
                    star(out, m.start(1), m.end(1));
                }
            }
        }
        star(out, NAME.matcher(text), 1);
        return out.toString();
    }

    private static void star(StringBuilder out, Matcher matcher, int group) {
        while (matcher.find()) {
            star(out, matcher.start(group), matcher.end(group));
        }
    }

    private static void star(StringBuilder out, int start, int end) {
        for (int i = start; i < end; i++) {
            if (!Character.isWhitespace(out.charAt(i))) {
                out.setCharAt(i, '*');
            }
        }
    }

    /** Seven, ten or eleven digits, counting spelled ones; without a cue before it, one must be spelled out. */
    private static boolean dials(String candidate, boolean cued) {
        String digits = candidate.toLowerCase(Locale.ROOT)
                .replaceAll("zero|one|two|three|four|five|six|seven|eight|nine", "w")
                .replaceAll("[^0-9w]", "");
        boolean length = digits.length() == 7 || digits.length() == 10 || digits.length() == 11;
        return length && (cued || digits.indexOf('w') >= 0 && Rx.is(digits, ".*\\d.*|w{7,}"));
    }
}
