package worthsaving.intake;

import java.util.Collection;
import java.util.List;
import java.util.Locale;
import java.util.function.Predicate;
import java.util.regex.Pattern;

/**
 * What the cells of a column must look like for it to be taken for a field though its name does not say so.
 *
 * @param needsName whether the name must come near as well, because the content alone is no proof
 */
record ContentTest(Field field, String why, boolean needsName, Predicate<String> cell) {

    private static final Pattern YEAR = Pattern.compile("(19[5-9]|20[0-4])\\d");
    private static final Pattern MONTH_AND_YEAR = Pattern.compile("(0?[1-9]|1[0-2])[./-](19[5-9]|20[0-4])\\d");
    private static final Pattern MONEY =
            Pattern.compile(".*([$€£]|\\b(USD|EUR|GBP|CAD|AUD|CHF)\\b).*", Pattern.CASE_INSENSITIVE);
    private static final Pattern LENGTH = Pattern.compile("\\d[\\d.,' ]*[kKxX]{0,3} ?(mi|miles|km|[kK])");
    private static final Pattern VIN = Pattern.compile("(?=.*\\d)[A-HJ-NPR-Z0-9]{17}", Pattern.CASE_INSENSITIVE);
    private static final Pattern CODES = Pattern.compile("([PCBU][0-3][0-9A-F]{3}[\\s,;|]*)+", Pattern.CASE_INSENSITIVE);
    private static final double LEAST_MILES = 500;
    private static final double MOST_MILES = 1_000_000;

    static List<ContentTest> all(Collection<String> makes) {
        return List.of(
                new ContentTest(Field.VIN, "its cells look like VINs", false, VIN.asMatchPredicate()),
                new ContentTest(Field.CODES, "its cells look like trouble codes", false, CODES.asMatchPredicate()),
                new ContentTest(Field.YEAR, "its cells look like years", false,
                        YEAR.asMatchPredicate().or(MONTH_AND_YEAR.asMatchPredicate())),
                new ContentTest(Field.PRICE, "its cells look like prices", false, MONEY.asMatchPredicate()),
                new ContentTest(Field.ODOMETER, "its cells look like distances", false, LENGTH.asMatchPredicate()),
                new ContentTest(Field.MAKE, "its cells are makes", false,
                        text -> makes.contains(text.toLowerCase(Locale.ROOT))),
                new ContentTest(Field.PRICE, "its name is near and its cells are sums", true, ContentTest::sum),
                new ContentTest(Field.ODOMETER, "its name is near and its cells are figures of that size", true,
                        text -> Amount.parse(text).filter(a -> a.value() >= LEAST_MILES && a.value() <= MOST_MILES)
                                .isPresent()),
                new ContentTest(Field.MODEL, "its name is near", true, text -> !text.isEmpty()),
                new ContentTest(Field.MAKE, "its name is near", true, text -> text.matches("[\\p{L} -]{2,30}")));
    }

    private static boolean sum(String text) {
        return Amount.parse(text).filter(a -> a.value() >= 0).isPresent();
    }
}
