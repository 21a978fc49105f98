package worthsaving.teardown;

import java.util.List;
import java.util.Set;
import worthsaving.quantity.Hours;
import worthsaving.quantity.Money;

/**
 * One access step of a car in pieces: open, or what it takes to open it.
 *
 * @param requires ids of the steps that must be open before
 * @param depth how many steps, one behind the other, lead to it
 * @param next closed, with everything that it requires open
 * @param hours of opening this step alone and closing it again, at the easing of what is open; zero when open
 * @param cost of opening it with everything closed that it requires; closing is due later and not in it
 * @param shows suspects in sight once it is open, and not before; of an open step those in sight by it
 */
public record Opening(
        String id, String name, Set<String> requires, int depth, boolean open, boolean next, Hours hours, Money cost,
        List<Suspect> shows) {

    /** @param chance that it has failed and is not mended */
    public record Suspect(String item, String name, double chance) {}

    public Opening {
        requires = Set.copyOf(requires);
        shows = List.copyOf(shows);
    }
}
