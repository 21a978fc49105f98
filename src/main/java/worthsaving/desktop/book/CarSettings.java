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

    /** What takes the case out with its settings. */
    public static Edit drop(String id, Map<String, String> settings, String label) {
        List<Edit> edits = new ArrayList<>(List.of(new Edit.DropCase(id)));
        settings.keySet().stream().filter(name -> name.startsWith(of(id)))
                .forEach(name -> edits.add(new Edit.Set(name, Optional.empty())));
        return new Edit.Several(label, edits);
    }
}
