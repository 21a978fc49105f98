package worthsaving.intake;

import java.util.ArrayList;
import java.util.Collection;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/**
 * Which column holds which field: by name first, and for needed fields that no name gives, by content
 * where it is unmistakable.
 */
final class Columns {

    private static final double MOST = 0.9;
    private static final int FEWEST_ROWS = 2;
    private static final Pattern YEAR = Pattern.compile("(19[5-9]|20[0-4])\\d");
    private static final Pattern MONEY =
            Pattern.compile(".*([$€£]|\\b(USD|EUR|GBP|CAD|AUD|CHF)\\b).*", Pattern.CASE_INSENSITIVE);
    private static final Pattern LENGTH = Pattern.compile("\\d[\\d.,' ]*[kKxX]{0,3} ?(mi|miles|km|[kK])");

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

    /** Adds needed columns that only their content tells, from the first rows of the table. */
    Columns completedBy(List<RawRow> sample, Collection<String> makes) {
        Map<Field, Column> found = new EnumMap<>(Field.class);
        found.putAll(byField);
        for (Field field : missing()) {
            Predicate<String> test = switch (field) {
                case YEAR -> YEAR.asMatchPredicate();
                case PRICE -> MONEY.asMatchPredicate();
                case ODOMETER -> LENGTH.asMatchPredicate();
                case MAKE -> cell -> makes.contains(cell.toLowerCase(Locale.ROOT));
                default -> cell -> false;
            };
            List<Integer> fits = new ArrayList<>();
            for (int i = 0; i < header.size(); i++) {
                int index = i;
                boolean free = found.values().stream().noneMatch(c -> c.index() == index);
                if (free && mostly(sample, i, test)) {
                    fits.add(i);
                }
            }
            if (fits.size() == 1) {
                int i = fits.get(0);
                found.put(field, Column.of(field, i, header.get(i)));
            }
        }
        return new Columns(found, header);
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
