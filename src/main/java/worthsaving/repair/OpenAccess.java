package worthsaving.repair;

import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import worthsaving.catalog.AccessStep;
import worthsaving.quantity.HoursRange;
import worthsaving.quantity.Range;

/**
 * The access steps of a car that is partly open: what is open costs no hours more, and eases the others
 * without being paid. Easing does not multiply, the strongest counts; so with a factor f of an open step on
 * the hours, another step's factor g below f is g / f on what is left, and one not below f does nothing.
 */
final class OpenAccess {

    private static final HoursRange NOTHING = new HoursRange(Range.exactly(0));

    private OpenAccess() {}

    /**
     * The named steps and all they require: nobody opens the one without the other.
     *
     * @throws IllegalArgumentException for an id that is no step of the catalogue
     */
    static Set<String> closure(List<AccessStep> steps, Set<String> open) {
        Map<String, AccessStep> byId = new HashMap<>();
        steps.forEach(step -> byId.put(step.id(), step));
        Set<String> all = new HashSet<>();
        open.forEach(id -> add(id, byId, all));
        return Set.copyOf(all);
    }

    private static void add(String id, Map<String, AccessStep> byId, Set<String> all) {
        AccessStep step = byId.get(id);
        if (step == null) {
            throw new IllegalArgumentException("the catalogue has no access step " + id);
        }
        if (all.add(id)) {
            step.requires().forEach(r -> add(r, byId, all));
        }
    }

    /** @param open as {@link #closure} gives them */
    static List<AccessStep> left(List<AccessStep> steps, Set<String> open) {
        return steps.stream().map(step -> left(step, open)).toList();
    }

    private static AccessStep left(AccessStep step, Set<String> open) {
        if (open.contains(step.id())) {
            return with(step, NOTHING, Map.of());
        }
        double factor = step.easedBy().entrySet().stream()
                .filter(e -> open.contains(e.getKey()))
                .mapToDouble(Map.Entry::getValue)
                .reduce(1, Math::min);
        if (factor == 1) {
            return step;
        }
        Map<String, Double> others = step.easedBy().entrySet().stream()
                .filter(e -> !open.contains(e.getKey()) && e.getValue() < factor)
                .collect(Collectors.toMap(Map.Entry::getKey, e -> e.getValue() / factor));
        return with(step, new HoursRange(step.hours().hours().times(factor)), others);
    }

    private static AccessStep with(AccessStep step, HoursRange hours, Map<String, Double> easedBy) {
        return new AccessStep(
                step.id(), step.name(), step.requires(), hours, easedBy, step.note(), step.source());
    }
}
