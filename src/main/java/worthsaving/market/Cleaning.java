package worthsaving.market;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;
import worthsaving.market.QualityReport.FieldSummary;
import worthsaving.market.QualityReport.RuleCount;

/** Applies cleaning rules in their order, each to what the former left, and counts. */
public record Cleaning(PriceTable table, QualityReport report) {

    private static final int EXAMPLES = 3;
    private static final int COMMONEST = 5;

    public static Cleaning clean(PriceTable raw, List<CleaningRule> rules) {
        List<PriceRow> rows = raw.rows();
        List<RuleCount> counts = new ArrayList<>();
        for (CleaningRule rule : rules) {
            Set<Long> repeats = rule.test() == CleaningRule.Test.REPEAT ? earlierRepeats(rows) : Set.of();
            List<PriceRow> left = new ArrayList<>(rows.size());
            List<String> examples = new ArrayList<>();
            long count = 0;
            for (PriceRow row : rows) {
                if (!rule.holds(row) && !repeats.contains(row.line())) {
                    left.add(row);
                    continue;
                }
                count++;
                if (examples.size() < EXAMPLES) {
                    examples.add(row.brief());
                }
                if (rule.action() == CleaningRule.Action.BLANK) {
                    left.add(row.without(rule.field()));
                }
            }
            counts.add(new RuleCount(rule, count, examples));
            rows = left;
        }
        QualityReport report = new QualityReport(
                raw.shape().name(), raw.rows().size(), raw.badCount(), rows.size(), counts, summaries(raw.shape(), rows));
        return new Cleaning(raw.with(rows), report);
    }

    /** Lines of adverts that come again later; the latest of each stays. */
    private static Set<Long> earlierRepeats(List<PriceRow> rows) {
        List<PriceRow> latestFirst = new ArrayList<>(rows);
        latestFirst.sort(Comparator.comparing(PriceRow::date).reversed().thenComparing(PriceRow::line));
        Set<String> seen = new HashSet<>();
        Set<Long> repeats = new HashSet<>();
        for (PriceRow row : latestFirst) {
            if (!seen.add(row.carIdentity())) {
                repeats.add(row.line());
            }
        }
        return repeats;
    }

    private static List<FieldSummary> summaries(DatasetShape shape, List<PriceRow> rows) {
        return Stream.concat(shape.columns().keySet().stream(), shape.indicators().keySet().stream())
                .filter(f -> f != Field.DATE)
                .sorted()
                .map(f -> f.isNumber() ? numbers(f, rows) : words(f, rows))
                .toList();
    }

    private static FieldSummary numbers(Field field, List<PriceRow> rows) {
        double[] stated = rows.stream()
                .mapToDouble(r -> r.number(field))
                .filter(v -> !Double.isNaN(v))
                .sorted()
                .toArray();
        String content = stated.length == 0
                ? "never stated"
                : String.format(
                        Locale.ROOT, "%.1f, %.1f, %.1f", stated[0], stated[stated.length / 2], stated[stated.length - 1]);
        return new FieldSummary(field, rows.size() - stated.length, content);
    }

    private static FieldSummary words(Field field, List<PriceRow> rows) {
        Map<String, Integer> counts = new HashMap<>();
        rows.forEach(r -> counts.merge(r.word(field), 1, Integer::sum));
        int missing = counts.getOrDefault("", 0);
        counts.remove("");
        String[] commonest = counts.entrySet().stream()
                .sorted(Map.Entry.<String, Integer>comparingByValue().reversed().thenComparing(Map.Entry.comparingByKey()))
                .limit(COMMONEST)
                .map(e -> e.getKey() + " " + e.getValue())
                .toArray(String[]::new);
        return new FieldSummary(field, missing, counts.size() + " words: " + String.join(", ", commonest));
    }
}
