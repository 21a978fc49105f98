package worthsaving.catalog;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** Rows of access.csv. */
final class AccessRows {

    static final String FILE = "access.csv";
    static final List<String> COLUMNS =
            List.of("id", "name", "requires", "low", "mode", "high", "eased_by", "note", "label", "source");

    private AccessRows() {}

    static AccessStep read(Row row, Ids access) {
        return new AccessStep(
                row.text("id"),
                row.required("name"),
                Set.copyOf(access.many(row, "requires")),
                row.hours(""),
                easedBy(row, access),
                row.text("note"),
                row.source());
    }

    private static Map<String, Double> easedBy(Row row, Ids access) {
        Map<String, Double> factors = new LinkedHashMap<>();
        for (String word : row.words("eased_by")) {
            int colon = word.indexOf(':');
            double factor = factor(word.substring(colon + 1));
            if (colon < 1 || !(factor >= 0 && factor <= 1)) {
                row.fault("eased_by", "'" + word + "' is not understood; write STEP:0.5 with a factor from 0 to 1");
            } else {
                String step = word.substring(0, colon);
                access.check(row, "eased_by", step);
                factors.put(step, factor);
            }
        }
        return factors;
    }

    private static double factor(String text) {
        try {
            return Double.parseDouble(text);
        } catch (NumberFormatException e) {
            return Double.NaN;
        }
    }
}
