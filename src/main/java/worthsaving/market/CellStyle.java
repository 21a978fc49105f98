package worthsaving.market;

import java.time.DateTimeException;
import java.time.LocalDate;
import java.time.YearMonth;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * How the cells of a table are written.
 *
 * @param separator between cells
 * @param asPeopleWrite whether numbers may carry signs, units and marks of thousands: $4,500 or 12.500 km
 * @param factors for a field in another unit than ours, such as kW: what its numbers are multiplied by
 * @param dayFirst whether 3/4/2025 is the third of April
 */
public record CellStyle(char separator, boolean asPeopleWrite, Map<Field, Double> factors, boolean dayFirst) {

    /** Commas between cells, plain numbers, ISO dates: the tables of open data. */
    public static final CellStyle PLAIN = new CellStyle(',', false, Map.of(), false);

    /** No road car's engine is larger; more is meant in cubic centimetres. */
    private static final double MOST_LITRES = 100;
    private static final double CM3_PER_LITRE = 1000;
    private static final Pattern UNITS = Pattern.compile(
            "(?i)[$\u20ac\u00a3]|us\\$|\\b(usd|eur|euro|gbp|obo|ono|vb|mi|miles?|kms?|kilometres|kilometers|ps|hp|bhp|kw|cc"
                    + "|ccm|cm3|l|litres|liters)\\b\\.?");
    private static final Pattern LETTER_AFTER_DIGIT = Pattern.compile("(?<=\\d)(?=[A-Za-z])");
    private static final Pattern GROUPED = Pattern.compile("[1-9]\\d{0,2}(?:([.,'\u2019 ])\\d{3})(?:\\1\\d{3})*");
    private static final Pattern ISO = Pattern.compile("(\\d{4}-\\d{2}-\\d{2})[T ].*");
    private static final Pattern POINTS = Pattern.compile("(\\d{1,2})\\.(\\d{1,2})\\.(\\d{4})");
    static final Pattern SLASHES = Pattern.compile("(\\d{1,2})/(\\d{1,2})/(\\d{4})");

    public CellStyle {
        factors = Map.copyOf(factors);
    }

    /** NaN for an empty cell, infinity for one that is no number of zero or more. */
    double number(Field field, String text) {
        if (text.isEmpty()) {
            return Double.NaN;
        }
        String plain = asPeopleWrite ? plain(field, text) : text;
        try {
            double value = Double.parseDouble(plain) * factors.getOrDefault(field, 1.0);
            if (asPeopleWrite && field == Field.ENGINE_LITRES && value > MOST_LITRES) {
                return value / CM3_PER_LITRE;
            }
            return value >= 0 ? value : Double.POSITIVE_INFINITY;
        } catch (NumberFormatException e) {
            return Double.POSITIVE_INFINITY;
        }
    }

    /** The digits with a point as decimal mark. */
    private static String plain(Field field, String text) {
        String spaced = LETTER_AFTER_DIGIT.matcher(text.replace('\u00a0', ' ').replace('\u202f', ' ')).replaceAll(" ");
        String digits = UNITS.matcher(spaced).replaceAll("").strip().replaceAll(",-+$", "");
        boolean thousands = field == Field.PRICE || field == Field.ODOMETER || field == Field.POWER;
        if (thousands && GROUPED.matcher(digits).matches()) {
            return digits.replaceAll("[^0-9]", "");
        }
        int mark = Math.max(digits.lastIndexOf(','), digits.lastIndexOf('.'));
        if (mark < 0) {
            return digits;
        }
        String whole = digits.substring(0, mark);
        boolean grouped = GROUPED.matcher(whole).matches();
        return (grouped ? whole.replaceAll("[^0-9]", "") : whole) + "." + digits.substring(mark + 1);
    }

    /** A day, or the middle of a month; null when it is neither. */
    LocalDate date(String text) {
        try {
            if (text.length() == 7) {
                return YearMonth.parse(text).atDay(15);
            }
            Matcher iso = ISO.matcher(text);
            Matcher points = POINTS.matcher(text);
            Matcher slashes = SLASHES.matcher(text);
            if (iso.matches()) {
                return LocalDate.parse(iso.group(1));
            }
            if (points.matches()) {
                return day(points, 2, 1);
            }
            if (slashes.matches()) {
                return dayFirst ? day(slashes, 2, 1) : day(slashes, 1, 2);
            }
            return LocalDate.parse(text);
        } catch (DateTimeException e) {
            return null;
        }
    }

    private static LocalDate day(Matcher parts, int month, int day) {
        return LocalDate.of(Integer.parseInt(parts.group(3)), Integer.parseInt(parts.group(month)),
                Integer.parseInt(parts.group(day)));
    }
}
