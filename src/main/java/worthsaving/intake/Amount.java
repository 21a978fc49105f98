package worthsaving.intake;

import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A number as people write it: 1,234.50 and 1.234,50, 210 000, 98k, 131xxx, $2,300 and 1.400,- €.
 *
 * <p>A single point or comma with exactly three digits after it separates thousands (1.234 is 1234),
 * otherwise it is the decimal mark.
 *
 * @param value the number, negative when written so
 * @param mark what stands before and after it: a unit or a currency, blank when nothing does
 * @param masked true when digits were crossed out; the value then has zeros in their place
 */
record Amount(double value, String mark, boolean masked) {

    private static final int LONGEST = 60;
    private static final int LONGEST_PLAIN = 15;
    private static final Pattern SHAPE = Pattern.compile(
            "(?<before>[^\\d]*)(?<digits>\\d[\\d.,'\u2019 ]*)(?<mask>[xX*]{1,3}(?![a-zA-Z]))?\\s*"
                    + "(?<kilo>[kK](?![a-zA-Z]))?(?<after>\\D*)");
    private static final Pattern GROUPED = Pattern.compile("\\d{1,3}(?:([.,'\u2019 ])\\d{3})(?:\\1\\d{3})*");

    static Optional<Amount> parse(String text) {
        if (isPlain(text)) {
            return Optional.of(new Amount(Long.parseLong(text), "", false));
        }
        String plain = text.replace('\u00a0', ' ').replace('\u202f', ' ').replace('\u2009', ' ').strip();
        if (plain.length() > LONGEST) {
            return Optional.empty();
        }
        Matcher m = SHAPE.matcher(plain);
        if (!m.matches()) {
            return Optional.empty();
        }
        boolean kilo = m.group("kilo") != null;
        Optional<Double> digits = digits(m.group("digits").replaceAll("[.,'\u2019 ]+$", ""), kilo);
        String before = m.group("before").replace('\u2212', '-');
        String after = m.group("after").strip().replaceAll("^-+", "");
        boolean negative = before.contains("-") || before.startsWith("(") && after.endsWith(")");
        int masked = m.group("mask") == null ? 0 : m.group("mask").length();
        String mark = (before.replaceAll("[-+(~]", "") + " " + after.replace(")", "")).strip();
        return digits.map(d -> new Amount(
                (negative ? -1 : 1) * d * (kilo ? 1000 : 1) * Math.pow(10, masked), mark, masked > 0));
    }

    /** Nearly all cells are plain whole numbers; they need no pattern. */
    private static boolean isPlain(String text) {
        boolean plain = !text.isEmpty() && text.length() <= LONGEST_PLAIN;
        for (int i = 0; i < text.length() && plain; i++) {
            plain = text.charAt(i) >= '0' && text.charAt(i) <= '9';
        }
        return plain;
    }

    private static Optional<Double> digits(String text, boolean kilo) {
        int point = Math.max(text.lastIndexOf('.'), text.lastIndexOf(','));
        char mark = point < 0 ? 0 : text.charAt(point);
        String whole = text;
        String fraction = "";
        if (point >= 0) {
            boolean alone = text.indexOf(mark) == point;
            boolean other = text.indexOf(mark == '.' ? ',' : '.') >= 0;
            boolean thousands = !alone
                    || !other && !kilo && text.length() - point == 4 && GROUPED.matcher(text).matches()
                            && text.charAt(0) != '0';
            if (!thousands) {
                whole = text.substring(0, point);
                fraction = text.substring(point + 1);
            }
        }
        boolean plainDigits = whole.chars().allMatch(Character::isDigit) && !whole.isEmpty();
        if (!plainDigits && !GROUPED.matcher(whole).matches() || !fraction.chars().allMatch(Character::isDigit)) {
            return Optional.empty();
        }
        String decimals = fraction.isEmpty() ? "" : "." + fraction;
        return Optional.of(Double.parseDouble(whole.replaceAll("\\D", "") + decimals));
    }
}
