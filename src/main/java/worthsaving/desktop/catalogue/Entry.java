package worthsaving.desktop.catalogue;

import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Collectors;
import worthsaving.catalog.CatalogueText;
import worthsaving.catalog.CatalogueText.Line;

/**
 * A row of one of the catalogue's main tables, as the list shows it.
 *
 * @param group what it belongs to, such as a system of the car; blank where there is none
 */
record Entry(Line line, String name, String group) {

    private static final Comparator<Entry> BY_GROUP = Comparator.comparing(Entry::group);

    /** Grouped, otherwise in the order of the file. */
    static List<Entry> of(CatalogueText text, Shown shown) {
        return text.lines(shown.file()).stream()
                .map(l -> new Entry(l, l.cell("name"), l.cell(shown.group())))
                .sorted(BY_GROUP)
                .toList();
    }

    String id() {
        return line.cell("id");
    }

    /** Every word typed stands in the name, the group or the id. */
    boolean matches(String words) {
        String all = (name + ' ' + group + ' ' + id()).toLowerCase(Locale.ROOT);
        return List.of(words.toLowerCase(Locale.ROOT).strip().split("\\s+")).stream().allMatch(all::contains);
    }

    /** Names by id over the main tables, for rows that name others. */
    static Map<String, String> names(CatalogueText text) {
        return List.of(Shown.values()).stream()
                .flatMap(shown -> text.lines(shown.file()).stream())
                .collect(Collectors.toMap(l -> l.cell("id"), l -> l.cell("name"), (first, second) -> first));
    }

    /** Lines of another table that name this entry in a column. */
    List<Line> linked(CatalogueText text, String file, String column) {
        Function<Line, String> named = l -> l.cell(column);
        return text.lines(file).stream().filter(l -> named.apply(l).equals(id())).toList();
    }
}
