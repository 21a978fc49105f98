package worthsaving.catalog;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;

/** What differs between two catalogues, line by line and figure by figure. */
public final class CatalogueDiff {

    /** What became of a line. */
    public enum Kind { ADDED, REMOVED, CHANGED }

    /**
     * One difference.
     *
     * @param table file the line stands in
     * @param id id of the line, or its ids joined by {@code " > "} for a link
     * @param field what changed, such as {@code onset.shape}; blank for a whole line
     * @param before text of the old figure; blank when added
     * @param after text of the new figure; blank when removed
     */
    public record Change(Kind kind, String table, String id, String field, String before, String after) {

        /** Such as {@code "items.csv OIL_PUMP: onset.shape 2.1 -> 2.4"}. */
        @Override
        public String toString() {
            return switch (kind) {
                case ADDED -> table + " " + id + ": added";
                case REMOVED -> table + " " + id + ": removed";
                case CHANGED -> table + " " + id + ": " + field + " " + before + " -> " + after;
            };
        }
    }

    private final List<Change> changes = new ArrayList<>();

    private CatalogueDiff() {}

    /** All differences, by table, in the order of the lines: changed and removed first, then added. */
    public static List<Change> between(Catalogue before, Catalogue after) {
        CatalogueDiff diff = new CatalogueDiff();
        diff.compare(ItemRows.FILE, before.items(), after.items(), FailureItem::id);
        diff.compare(DamageRows.FILE, before.damage(), after.damage(), d -> d.cause() + " > " + d.effect());
        diff.compare(FindingRows.FILE, before.findings(), after.findings(), FindingKind::id);
        diff.compare(
                LinkRows.FILE, before.findingLinks(), after.findingLinks(), l -> l.finding() + " > " + l.item());
        diff.compare(AccessRows.FILE, before.accessSteps(), after.accessSteps(), AccessStep::id);
        diff.compare(RemedyRows.FILE, before.remedies(), after.remedies(), Remedy::id);
        diff.compare(ToolRows.FILE, before.tools(), after.tools(), Tool::id);
        diff.compare(MoneyRows.FILE, before.moneyLines(), after.moneyLines(), MoneyLine::id);
        return List.copyOf(diff.changes);
    }

    private <T extends Record> void compare(String table, List<T> before, List<T> after, Function<T, String> key) {
        Map<String, T> added = new LinkedHashMap<>();
        after.forEach(line -> added.put(key.apply(line), line));
        for (T old : before) {
            String id = key.apply(old);
            T now = added.remove(id);
            if (now == null) {
                changes.add(new Change(Kind.REMOVED, table, id, "", "", ""));
            } else if (!old.equals(now)) {
                compareFields(table, id, FieldTexts.of(old), FieldTexts.of(now));
            }
        }
        added.keySet().forEach(id -> changes.add(new Change(Kind.ADDED, table, id, "", "", "")));
    }

    private void compareFields(String table, String id, Map<String, String> before, Map<String, String> after) {
        Map<String, String> all = new LinkedHashMap<>(before);
        after.forEach(all::putIfAbsent);
        for (String field : all.keySet()) {
            String old = before.getOrDefault(field, "");
            String now = after.getOrDefault(field, "");
            if (!old.equals(now)) {
                changes.add(new Change(Kind.CHANGED, table, id, field, old, now));
            }
        }
    }
}
