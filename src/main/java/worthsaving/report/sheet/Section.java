package worthsaving.report.sheet;

import java.util.List;

/** A part of a sheet that can give up its last lines when the page is full; it then says how many. */
public sealed interface Section {

    /** How long a section keeps its lines when the page is full; the later, the sooner it gives them up. */
    enum Importance { SAFETY, DECIDES, SUPPORTS, BACKGROUND }

    String heading();

    Importance importance();

    /** Number of lines or rows shown. */
    int size();

    /** Number of lines or rows that are left out, most important first being shown. */
    int omitted();

    /** The same with only the first lines. */
    Section first(int most);

    /** Whether there is nothing to say, not even that something was left out. */
    default boolean isBlank() {
        return size() == 0 && omitted() == 0 && (!(this instanceof Table t) || t.closing().isEmpty());
    }

    /** Empty when nothing is left out. */
    default String rest() {
        return omitted() == 0 ? "" : size() == 0 ? omitted() + " left out for want of room"
                : "\u2026 and " + omitted() + " more";
    }

    /** Bulleted sentences. */
    record Lines(String heading, Importance importance, List<String> lines, int omitted) implements Section {

        public Lines {
            lines = lines.stream().map(SheetText::clean).toList();
        }

        static Lines of(String heading, Importance importance, List<String> lines) {
            return new Lines(heading, importance, lines, 0);
        }

        @Override
        public int size() {
            return lines.size();
        }

        @Override
        public Lines first(int most) {
            return most >= size() ? this : new Lines(heading, importance, lines.subList(0, most),
                    omitted + size() - most);
        }
    }

    /** One column of a table; numbers stand to the right and never wrap. */
    record Column(String title, boolean number) {

        static Column text(String title) {
            return new Column(title, false);
        }

        static Column number(String title) {
            return new Column(title, true);
        }
    }

    /**
     * Rows under column titles.
     *
     * @param closing a sentence under the table, kept even when rows are left out; may be blank
     */
    record Table(String heading, Importance importance, List<Column> columns, List<List<String>> cells, String closing,
            int omitted) implements Section {

        public Table {
            columns = List.copyOf(columns);
            cells = cells.stream().map(row -> row.stream().map(SheetText::clean).toList()).toList();
            closing = SheetText.clean(closing);
            for (List<String> row : cells) {
                if (row.size() != columns.size()) {
                    throw new IllegalArgumentException(heading + ": a row of " + columns.size()
                            + " cells is needed, not " + row.size());
                }
            }
        }

        @Override
        public int size() {
            return cells.size();
        }

        @Override
        public Table first(int most) {
            return most >= size() ? this : new Table(heading, importance, columns, cells.subList(0, most), closing,
                    omitted + size() - most);
        }
    }
}
