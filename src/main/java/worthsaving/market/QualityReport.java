package worthsaving.market;

import java.util.List;
import java.util.Locale;

/**
 * What a table held and what cleaning did to it.
 *
 * @param read rows in the file that could be read
 * @param unreadable rows that could not
 */
public record QualityReport(
        String table, long read, long unreadable, long kept, List<RuleCount> rules, List<FieldSummary> fields) {

    /** How often a rule held, with a few rows it held for. */
    public record RuleCount(CleaningRule rule, long count, List<String> examples) {

        public RuleCount {
            examples = List.copyOf(examples);
        }
    }

    /**
     * One column of the kept rows.
     *
     * @param missing rows that do not state it
     * @param content for numbers "least, median, greatest", for words the commonest
     */
    public record FieldSummary(Field field, long missing, String content) {}

    public QualityReport {
        rules = List.copyOf(rules);
        fields = List.copyOf(fields);
    }

    /** The report as Markdown. */
    public String toMarkdown() {
        StringBuilder out = new StringBuilder();
        out.append(String.format(
                Locale.ROOT, "%s: %,d rows read, %,d unreadable, %,d kept.%n\n", table, read, unreadable, kept));
        out.append("| rule | does | rows | why | examples |\n|---|---|---|---|---|\n");
        for (RuleCount rule : rules) {
            out.append(String.format(
                    Locale.ROOT,
                    "| %s | %s | %,d | %s | %s |\n",
                    rule.rule().name(),
                    rule.rule().action().name().toLowerCase(Locale.ROOT),
                    rule.count(),
                    rule.rule().why(),
                    String.join("; ", rule.examples())));
        }
        out.append("\n| field | not stated | content |\n|---|---|---|\n");
        for (FieldSummary field : fields) {
            out.append(String.format(
                    Locale.ROOT, "| %s | %,d | %s |\n", field.field().key(), field.missing(), field.content()));
        }
        return out.toString();
    }
}
