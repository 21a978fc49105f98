package worthsaving.desktop.book;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import worthsaving.casebook.Edit;

/** Settings of the casebook that belong to one case and go with it. */
public final class CarSettings {

    private CarSettings() {}

    /** How the names of a case's settings begin. */
    public static String of(String id) {
        return "car." + id + ".";
    }

    /**
     * A figure above zero.
     *
     * @param text as a setting holds it; null, and what is no such figure, count as not there
     */
    public static Optional<Double> positive(String text) {
        try {
            return Optional.ofNullable(text).map(Double::valueOf).filter(a -> a > 0);
        } catch (NumberFormatException e) {
            return Optional.empty();
        }
    }

    /** What takes the case out with its settings. */
    public static Edit drop(String id, Map<String, String> settings, String label) {
        List<Edit> edits = new ArrayList<>(List.of(new Edit.DropCase(id)));
        settings.keySet().stream().filter(name -> name.startsWith(of(id)))
                .forEach(name -> edits.add(new Edit.Set(name, Optional.empty())));
        return new Edit.Several(label, edits);
    }
}
