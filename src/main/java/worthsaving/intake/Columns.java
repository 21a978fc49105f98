package worthsaving.intake;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collection;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Collectors;

/**
 * Which column holds which field: as told first, then by name, then by content where it is unmistakable.
 */
final class Columns {

    private static final double MOST = 0.9;
    private static final int FEWEST_ROWS = 2;

    private final Map<Field, Column> byField;
    private final List<String> header;
    private final List<String> unused;

    private Columns(Map<Field, Column> byField, List<String> header) {
        this.byField = byField;
        this.header = List.copyOf(header);
        Set<Integer> used = byField.values().stream().map(Column::index).collect(Collectors.toSet());
        List<String> rest = new ArrayList<>();
        for (int i = 0; i < header.size(); i++) {
            if (!used.contains(i) && !header.get(i).isBlank()) {
                rest.add(header.get(i));
            }
        }
        unused = List.copyOf(rest);
    }

    /** Matches by name; of several columns for one field the first counts. */
    static Columns named(List<String> header) {
        Map<Field, Column> found = new EnumMap<>(Field.class);
        for (int i = 0; i < header.size(); i++) {
            Column.named(header.get(i), i).ifPresent(c -> found.putIfAbsent(c.field(), c));
        }
        return new Columns(found, header);
    }

    /**
     * As told by the user or remembered of an earlier table.
     *
     * @param choice our name of a field and the header of its column; a header may stand there for no field at all
     * @return faults, each naming what is not there; empty when all could be followed
     */
    Columns told(ColumnChoice choice, List<String> faults) {
        Map<Field, Column> found = new EnumMap<>(Field.class);
        found.putAll(byField);
        choice.headersByField().forEach((name, wanted) -> {
            Optional<Field> field = Field.named(Field.plain(name));
            int index = indexOf(wanted);
            if (field.isEmpty()) {
                faults.add("there is no field '" + name + "'; " + Nearest.hint(name, Field.allNames().toList(),
                        "see the names in the documentation"));
            } else if (index < 0) {
                faults.add("the table has no column '" + wanted + "'; " + Nearest.hint(wanted, header,
                        "its columns are " + String.join(", ", header.stream().limit(40).toList())));
            } else {
                found.values().removeIf(c -> c.index() == index);
                found.put(field.get(), Column.of(field.get(), index, header.get(index), choice.why()));
            }
        });
        for (String ignored : choice.ignored()) {
            int index = indexOf(ignored);
            found.values().removeIf(c -> c.index() == index);
        }
        return new Columns(found, header);
    }

    private int indexOf(String wanted) {
        int exact = header.indexOf(wanted);
        if (exact >= 0) {
            return exact;
        }
        for (int i = 0; i < header.size(); i++) {
            if (Field.plain(header.get(i)).equals(Field.plain(wanted)) && !Field.plain(wanted).isEmpty()) {
                return i;
            }
        }
        return -1;
    }

    /** Adds columns that only their content tells, from the first rows of the table. */
    Columns completedBy(List<RawRow> sample, Collection<String> makes, ColumnChoice choice) {
        Map<Field, Column> found = new EnumMap<>(Field.class);
        found.putAll(byField);
        for (ContentTest test : ContentTest.all(makes)) {
            if (found.containsKey(test.field())) {
                continue;
            }
            List<Integer> fits = new ArrayList<>();
            for (int i = 0; i < header.size(); i++) {
                int index = i;
                boolean free = found.values().stream().noneMatch(c -> c.index() == index)
                        && !choice.ignored().contains(header.get(i));
                boolean named = !test.needsName() || near(header.get(i), test.field());
                if (free && named && mostly(sample, i, test.cell())) {
                    fits.add(i);
                }
            }
            if (fits.size() == 1) {
                int i = fits.get(0);
                found.put(test.field(), Column.of(test.field(), i, header.get(i), test.why()));
            }
        }
        return new Columns(found, header);
    }

    /** True for a name that is a slip of one of the field's, or holds one among its words. */
    private static boolean near(String header, Field field) {
        String name = Field.plain(header);
        boolean word = Arrays.stream(name.split("_")).anyMatch(w -> Field.named(w).filter(f -> f == field).isPresent());
        return word || Nearest.to(name, Field.allNames().toList()).flatMap(Field::named).filter(f -> f == field)
                .isPresent();
    }

    private static boolean mostly(List<RawRow> sample, int index, Predicate<String> test) {
        List<String> cells = sample.stream()
                .filter(r -> r.damage().isEmpty() && r.cells().size() > index)
                .map(r -> r.cells().get(index).strip())
                .filter(c -> !c.isEmpty())
                .toList();
        return cells.size() >= FEWEST_ROWS && cells.stream().filter(test).count() >= MOST * cells.size();
    }

    /** Count of header cells whose name is known: how well a separator fits. */
    static long known(List<String> header) {
        return header.stream().filter(h -> Column.named(h, 0).isPresent()).count();
    }

    /** Position of the column of a field; -1 when there is none. */
    int index(Field field) {
        Column column = byField.get(field);
        return column == null ? -1 : column.index();
    }

    Optional<Column> get(Field field) {
        return Optional.ofNullable(byField.get(field));
    }

    /** Name of the column as the file spells it, or ours when the file has none. */
    String name(Field field) {
        Column column = byField.get(field);
        return column == null || column.header().isBlank() ? field.title() : column.header();
    }

    String name(int index) {
        return index >= 0 && index < header.size() ? header.get(index) : "";
    }

    /** Columns in use, in the order of the table. */
    List<Column> used() {
        return byField.values().stream().sorted(Comparator.comparingInt(Column::index)).toList();
    }

    List<Field> missing() {
        return Field.NEEDED.stream().filter(f -> !byField.containsKey(f)).toList();
    }

    int width() {
        return header.size();
    }

    List<String> header() {
        return header;
    }

    /** Columns that nothing is read from. */
    List<String> unused() {
        return unused;
    }

    /** True when no cell is a known name and several hold digits: data where the header should be. */
    boolean looksLikeData() {
        return byField.isEmpty()
                && header.stream().filter(h -> h.chars().anyMatch(Character::isDigit)).count() >= 2;
    }
}
