package worthsaving.intake;

import java.util.List;
import java.util.Map;

/**
 * Which column to take for which field, by somebody's word rather than by the look of the table.
 *
 * @param headersByField our name of a field, such as {@code price}, and the header of its column
 * @param ignored headers of columns to leave alone
 * @param why whose word it is, for people
 */
public record ColumnChoice(Map<String, String> headersByField, List<String> ignored, String why) {

    /** Nobody said anything. */
    public static final ColumnChoice NONE = new ColumnChoice(Map.of(), List.of(), "");

    public ColumnChoice {
        headersByField = Map.copyOf(headersByField);
        ignored = List.copyOf(ignored);
    }

    /** As the user says now. */
    public static ColumnChoice told(Map<String, String> headersByField, List<String> ignored) {
        return new ColumnChoice(headersByField, ignored, "as you told");
    }

    boolean isEmpty() {
        return headersByField.isEmpty() && ignored.isEmpty();
    }
}
