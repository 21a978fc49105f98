package worthsaving.market;

import java.io.IOException;
import java.io.Reader;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;

/**
 * One rule of cleaning, kept as data. A row that meets the test is dropped, or only the tested number is blanked.
 *
 * @param test how the field is compared with {@code value}; a field not stated meets no test but MISSING
 */
public record CleaningRule(String name, Field field, Test test, String value, Action action, String why) {

    /**
     * BELOW and ABOVE compare numbers, ONE_OF with a list parted by spaces. AFTER_ADVERT: a year more than
     * {@code value} years past the advert's. MILES_PER_YEAR_BELOW: odometer too small for the age to be real,
     * for cars of three years or more. REPEAT: the car of a later advert, by
     * {@link PriceRow#carIdentity}.
     */
    public enum Test { BELOW, ABOVE, ONE_OF, MISSING, AFTER_ADVERT, MILES_PER_YEAR_BELOW, REPEAT }

    /** What happens to a row that meets the test. */
    public enum Action { DROP, BLANK }

    private static final int OLD_ENOUGH = 3;

    public CleaningRule {
        if (action == Action.BLANK && (field == Field.PRICE || !field.isNumber())) {
            throw new IllegalArgumentException("rule '" + name + "': only a number other than the price can be blanked");
        }
    }

    /** Reads rules from CSV with the header name,field,test,value,action,why. */
    public static List<CleaningRule> read(Reader reader, String origin) throws IOException {
        List<CleaningRule> rules = new ArrayList<>();
        CSVFormat format = CSVFormat.RFC4180.builder().setHeader().setSkipHeaderRecord(true).setTrim(true).get();
        try (CSVParser parser = CSVParser.parse(reader, format)) {
            for (CSVRecord row : parser) {
                try {
                    rules.add(new CleaningRule(
                            row.get("name"),
                            Field.valueOf(constant(row.get("field"))),
                            Test.valueOf(constant(row.get("test"))),
                            row.get("value"),
                            Action.valueOf(constant(row.get("action"))),
                            row.get("why")));
                } catch (IllegalArgumentException e) {
                    throw new IllegalArgumentException(
                            origin + ", line " + parser.getCurrentLineNumber() + ": " + e.getMessage(), e);
                }
            }
        }
        return rules;
    }

    private static String constant(String text) {
        return text.toUpperCase(Locale.ROOT).replace('-', '_');
    }

    /** Whether a single row meets the test; REPEAT needs the whole table and never holds here. */
    boolean holds(PriceRow row) {
        return switch (test) {
            case MISSING -> field.isNumber() ? Double.isNaN(row.number(field)) : row.word(field).isEmpty();
            case BELOW -> row.number(field) < Double.parseDouble(value);
            case ABOVE -> row.number(field) > Double.parseDouble(value);
            case ONE_OF -> oneOf(row);
            case AFTER_ADVERT -> row.year() > row.date().getYear() + Double.parseDouble(value);
            case MILES_PER_YEAR_BELOW -> row.ageYears() >= OLD_ENOUGH
                    && row.miles() < Double.parseDouble(value) * row.ageYears();
            case REPEAT -> false;
        };
    }

    private boolean oneOf(PriceRow row) {
        Set<String> values = Set.of(value.split(" +"));
        if (!field.isNumber()) {
            return values.contains(row.word(field));
        }
        double number = row.number(field);
        return values.stream().anyMatch(v -> Double.parseDouble(v) == number);
    }
}
