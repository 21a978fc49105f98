package worthsaving.desktop.catalogue;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;

/**
 * One thing to fill in: a single cell, or low, mode and high of a range.
 *
 * @param key names it in texts: the table without its ending, and the column or, for a range, its prefix
 * @param columns one, or three
 */
record Box(String key, List<String> columns) {

    /** Told by the heading or by hand in an editor: changing them would tear links between tables. */
    private static final Set<String> FIXED = Set.of("id", "item", "part_source", "cause", "effect", "finding");

    private static final String LOW = "low";

    Box {
        columns = List.copyOf(columns);
    }

    boolean isRange() {
        return columns.size() == 3;
    }

    /** In the order of the columns. */
    static List<Box> of(String file, List<String> columns) {
        String table = file.replace(".csv", "");
        List<Box> boxes = new ArrayList<>();
        for (String column : columns) {
            String prefix = column.endsWith(LOW) ? column.substring(0, column.length() - LOW.length()) : column;
            List<String> range = List.of(prefix + LOW, prefix + "mode", prefix + "high");
            if (column.endsWith(LOW) && columns.containsAll(range)) {
                boxes.add(new Box(table + ".range." + (prefix.isEmpty() ? "value" : prefix.replace("_", "")), range));
            } else if (!FIXED.contains(column) && boxes.stream().noneMatch(b -> b.columns().contains(column))) {
                boxes.add(new Box(table + '.' + column, List.of(column)));
            }
        }
        return boxes;
    }
}
