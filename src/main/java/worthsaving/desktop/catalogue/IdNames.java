package worthsaving.desktop.catalogue;

import java.util.Arrays;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * Lists of ids in cells, shown by their names and entered by name or by id.
 *
 * @param names by id
 */
record IdNames(Map<String, String> names) {

    /** Columns that hold ids of items, access steps or tools, parted by spaces. */
    private static final Set<String> LISTS = Set.of("tools", "access", "root_causes", "requires", "closes");
    private static final String BETWEEN = "; ";

    IdNames {
        names = Map.copyOf(names);
    }

    static boolean isList(String column) {
        return LISTS.contains(column);
    }

    /** Such as {@code "Battery tester; Charger"}; an id without a name stands for itself. */
    String shown(String column, String cell) {
        return !isList(column) || cell.isBlank() ? cell : Arrays.stream(cell.strip().split("\\s+"))
                .map(id -> names.getOrDefault(id, id)).collect(Collectors.joining(BETWEEN));
    }

    /** What the file holds for it; words that are neither name nor id stay, for the catalogue's checks to refuse. */
    String cell(String column, String typed) {
        if (!isList(column)) {
            return typed;
        }
        Map<String, String> ids = names.entrySet().stream().collect(Collectors.toMap(
                e -> e.getValue().toLowerCase(Locale.ROOT), Map.Entry::getKey, (first, second) -> first));
        return Arrays.stream(typed.split(";")).map(String::strip).filter(part -> !part.isEmpty())
                .map(part -> ids.getOrDefault(part.toLowerCase(Locale.ROOT), part))
                .collect(Collectors.joining(" "));
    }
}
