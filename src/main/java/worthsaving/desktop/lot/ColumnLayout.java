package worthsaving.desktop.lot;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * Order, width and visibility of the columns, and what is sorted by; kept as text between starts.
 *
 * @param columns every column once, in the order shown
 */
public record ColumnLayout(List<Shown> columns, Optional<Sorting> sorting) {

    /**
     * One column.
     *
     * @param width in sizes of ordinary text; 0 for the usual one
     */
    public record Shown(LotColumn column, double width, boolean visible) {}

    /** Sorted by this column. */
    public record Sorting(LotColumn column, boolean ascending) {}

    public ColumnLayout {
        columns = List.copyOf(columns);
    }

    /** All columns in their usual order and width. */
    public static ColumnLayout usual() {
        return complete(List.of(), Optional.empty());
    }

    /** Reads what {@link #toText} wrote; what it cannot read it leaves at the usual. */
    public static ColumnLayout parse(String text) {
        List<Shown> columns = new ArrayList<>();
        Optional<Sorting> sorting = Optional.empty();
        for (String part : text.split(";")) {
            String[] cells = part.split(":");
            Optional<LotColumn> column = named(cells[0].replaceFirst("^[<>]", ""));
            if (column.isEmpty()) {
                continue;
            }
            if (part.startsWith("<") || part.startsWith(">")) {
                sorting = Optional.of(new Sorting(column.get(), part.startsWith("<")));
            } else if (cells.length == 3 && cells[1].matches("\\d{1,3}(\\.\\d+)?")) {
                columns.add(new Shown(column.get(), Double.parseDouble(cells[1]), cells[2].equals("shown")));
            }
        }
        return complete(columns, sorting);
    }

    public String toText() {
        String sorted = sorting.map(s -> (s.ascending() ? "<" : ">") + s.column().name()).orElse("");
        return columns.stream()
                .map(c -> c.column().name() + ":" + c.width() + ":" + (c.visible() ? "shown" : "hidden"))
                .collect(Collectors.joining(";", "", ";" + sorted));
    }

    private static ColumnLayout complete(List<Shown> some, Optional<Sorting> sorting) {
        Set<LotColumn> missing = EnumSet.allOf(LotColumn.class);
        List<Shown> all = new ArrayList<>(some.stream().filter(c -> missing.remove(c.column())).toList());
        missing.forEach(c -> all.add(new Shown(c, 0, true)));
        return new ColumnLayout(all, sorting);
    }

    private static Optional<LotColumn> named(String name) {
        return EnumSet.allOf(LotColumn.class).stream().filter(c -> c.name().equals(name)).findFirst();
    }
}
