package worthsaving.catalog;

import java.util.List;
import java.util.SortedSet;
import java.util.TreeSet;

/** Collects the faults of all files, so that they can be shown together. */
final class Faults {

    private final SortedSet<CatalogueFault> all = new TreeSet<>();

    void add(String file, long line, String column, String message) {
        all.add(new CatalogueFault(file, line, column, message));
    }

    boolean isEmpty() {
        return all.isEmpty();
    }

    List<CatalogueFault> list() {
        return List.copyOf(all);
    }
}
