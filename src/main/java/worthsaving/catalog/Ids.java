package worthsaving.catalog;

import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.regex.Pattern;

/** The ids of one table: each well formed and given once, and known to the tables that refer to it. */
final class Ids {

    private static final Pattern UPPER = Pattern.compile("[A-Z][A-Z0-9_]*");
    private static final Pattern LOWER = Pattern.compile("[a-z][a-z0-9_]*");

    private final String file;
    private final Set<String> known;
    private final boolean complete;

    private Ids(String file, Set<String> known, boolean complete) {
        this.file = file;
        this.known = known;
        this.complete = complete;
    }

    /** Upper-case ids of column {@code id}. */
    static Ids of(Table table) {
        return of(table, UPPER, "capital letters, digits and underscores");
    }

    /** Lower-case ids of column {@code id}. */
    static Ids ofLowerCase(Table table) {
        return of(table, LOWER, "small letters, digits and underscores");
    }

    private static Ids of(Table table, Pattern form, String words) {
        Set<String> seen = new LinkedHashSet<>();
        for (Row row : table.rows()) {
            String id = row.required("id");
            if (!id.isEmpty() && !form.matcher(id).matches()) {
                row.fault("id", "'" + id + "' is not an id; use " + words + ", beginning with a letter");
            }
            if (!id.isEmpty() && !seen.add(id)) {
                row.fault("id", "'" + id + "' is given a second time; rename or remove one of the two");
            }
        }
        return new Ids(table.file(), seen, table.whole());
    }

    /** The one id in a cell, checked. */
    String one(Row row, String column) {
        String id = row.required(column);
        if (!id.isEmpty()) {
            check(row, column, id);
        }
        return id;
    }

    /** The ids in a cell, checked; none in an empty cell. */
    List<String> many(Row row, String column) {
        List<String> ids = row.words(column);
        ids.forEach(id -> check(row, column, id));
        if (new HashSet<>(ids).size() < ids.size()) {
            row.fault(column, "an id is given twice in this cell; name each once");
        }
        return ids;
    }

    void check(Row row, String column, String id) {
        if (complete && !known.contains(id)) {
            row.fault(column, "'" + id + "' is not in " + file + "; correct the spelling or add it there");
        }
    }
}
