package worthsaving.catalog;

import java.util.ArrayList;
import java.util.Collection;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** Finds circles in "from leads to" relations. */
final class Circles {

    private final Map<String, ? extends Collection<String>> next;
    private final Set<String> done = new HashSet<>();
    private final List<String> path = new ArrayList<>();
    private final List<List<String>> found = new ArrayList<>();

    private Circles(Map<String, ? extends Collection<String>> next) {
        this.next = next;
    }

    /**
     * One circle for each place where a depth-first walk runs back into its own path; empty when there
     * is none at all. Each is listed once around, without repeating its first member.
     */
    static List<List<String>> in(Map<String, ? extends Collection<String>> next) {
        Circles circles = new Circles(next);
        next.keySet().stream().sorted().forEach(circles::walk);
        return circles.found;
    }

    private void walk(String id) {
        int at = path.indexOf(id);
        if (at >= 0) {
            found.add(List.copyOf(path.subList(at, path.size())));
            return;
        }
        if (!done.add(id)) {
            return;
        }
        path.add(id);
        if (next.containsKey(id)) {
            next.get(id).stream().sorted().forEach(this::walk);
        }
        path.remove(path.size() - 1);
    }
}
