package worthsaving.catalog;

import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;

/** What must hold between the tables, once each row has been read. */
final class CatalogueChecks {

    private CatalogueChecks() {}

    /** No pair of columns is given twice. */
    static void pairsAreUnique(Table table, String first, String second) {
        Set<List<String>> seen = new HashSet<>();
        for (Row row : table.rows()) {
            if (!seen.add(List.of(row.text(first), row.text(second)))) {
                row.fault(second, row.text(first) + " and " + row.text(second) + " stand in an earlier line; keep one");
            }
        }
    }

    static void damageHasNoCircle(Table damage) {
        Map<String, Set<String>> effects = new TreeMap<>();
        Map<List<String>, Row> rows = new HashMap<>();
        for (Row row : damage.rows()) {
            effects.computeIfAbsent(row.text("cause"), k -> new LinkedHashSet<>()).add(row.text("effect"));
            rows.put(List.of(row.text("cause"), row.text("effect")), row);
        }
        for (List<String> circle : Circles.in(effects)) {
            Row row = rows.get(List.of(circle.get(circle.size() - 1), circle.get(0)));
            row.fault("effect", circleText(circle) + "; remove the weakest link");
        }
    }

    static void accessHasNoCircle(Table access) {
        Map<String, List<String>> requires = new TreeMap<>();
        Map<String, Row> rows = new HashMap<>();
        for (Row row : access.rows()) {
            requires.put(row.text("id"), row.words("requires"));
            rows.put(row.text("id"), row);
        }
        for (List<String> circle : Circles.in(requires)) {
            Row row = rows.get(circle.get(circle.size() - 1));
            row.fault("requires", circleText(circle) + "; a step cannot require itself");
        }
    }

    static void itemsCanBeMended(Table items, List<FailureItem> read, List<Remedy> remedies) {
        Set<String> closed = new HashSet<>();
        remedies.forEach(r -> closed.addAll(r.closes()));
        for (int i = 0; i < read.size(); i++) {
            if (read.get(i).parts().isEmpty() && !closed.contains(read.get(i).id())) {
                items.rows()
                        .get(i)
                        .fault(
                                "id",
                                read.get(i).id() + " has neither a part nor a remedy; add a line to parts.csv"
                                        + " (ON_THE_SHELF,0,0,0 if the job needs no part) or to remedies.csv");
            }
        }
    }

    static void findingsHaveCauses(Table findings, List<FindingLink> links) {
        Set<String> linked = new HashSet<>();
        links.forEach(l -> linked.add(l.finding()));
        for (Row row : findings.rows()) {
            if (!linked.contains(row.text("id"))) {
                row.fault("id", row.text("id") + " has no cause; add a line to finding_links.csv or remove it");
            }
        }
    }

    /** A root cause is a cause: damage.csv must say how often it kills the item. */
    static void rootCausesDoDamage(Table items, List<DamageLink> damage) {
        Set<List<String>> links = new HashSet<>();
        damage.forEach(d -> links.add(List.of(d.cause(), d.effect())));
        for (Row row : items.rows()) {
            for (String cause : row.words("root_causes")) {
                if (!links.contains(List.of(cause, row.text("id")))) {
                    row.fault(
                            "root_causes",
                            cause + " is named as a root cause, but damage.csv has no line " + cause + ","
                                    + row.text("id") + "; add it or take the root cause out");
                }
            }
        }
    }

    private static String circleText(List<String> circle) {
        return "goes round in a circle: " + String.join(" > ", circle) + " > " + circle.get(0);
    }
}
