package worthsaving.catalog;

import java.util.Map;
import java.util.Set;
import worthsaving.quantity.HoursRange;
import worthsaving.quantity.Source;

/**
 * A piece of getting there and back, such as taking the front cover off and refitting it. Paid once
 * however many jobs need it, together with every step it requires.
 *
 * @param requires ids of steps that must be paid too
 * @param hours hours of this step alone
 * @param easedBy for steps that make this one quicker when they are paid as well: the factor on hours
 */
public record AccessStep(
        String id, String name, Set<String> requires, HoursRange hours, Map<String, Double> easedBy, String note,
        Source source) {

    public AccessStep {
        requires = Set.copyOf(requires);
        easedBy = Map.copyOf(easedBy);
    }
}
