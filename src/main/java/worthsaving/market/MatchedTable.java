package worthsaving.market;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/**
 * How the user's own table will be read, to be shown before it is.
 *
 * @param matches one for each field found, in the order of {@link Field}
 * @param ignored headers that nothing is read from
 * @param notes what else was decided, each ready to be shown
 */
public record MatchedTable(
        DatasetShape shape, CellStyle style, List<Match> matches, List<String> ignored, List<String> notes) {

    /**
     * A field with its column.
     *
     * @param unit what its figures count, "" for words
     * @param why what the match rests on
     */
    public record Match(Field field, String header, String unit, String why) {

        @Override
        public String toString() {
            return String.format(Locale.ROOT, "%-17s from '%s'%s: %s", field.key(), header,
                    unit.isEmpty() ? "" : " in " + unit, why);
        }
    }

    public MatchedTable {
        matches = List.copyOf(matches);
        ignored = List.copyOf(ignored);
        notes = List.copyOf(notes);
    }

    /** All of it in lines for people. */
    public List<String> lines() {
        List<String> lines = new ArrayList<>();
        matches.forEach(m -> lines.add("  " + m));
        if (!ignored.isEmpty()) {
            lines.add("  not used: " + String.join(", ", ignored));
        }
        notes.forEach(n -> lines.add("  " + n));
        return lines;
    }
}
