package worthsaving.teardown;

import java.util.List;
import java.util.Objects;
import worthsaving.quantity.Money;

/**
 * What is best to do next, and after each of its results.
 *
 * @param id of the way out, of the remedy or of what is looked at
 * @param worth expected money from here on under the best continuation; nothing spent before counts
 * @param cost of looking, opening up included; zero for an end
 * @param results of looking, likeliest first; empty for an end
 */
public record Move(Kind kind, String id, String name, Money worth, Money cost, List<Result> results) {

    /** Ends of the teardown, and looking before deciding. */
    public enum Kind { STOP, FINISH, LOOK }

    /**
     * @param name what is seen, in words
     * @param then the best continuation
     */
    public record Result(String name, double chance, Move then) {}

    public Move {
        Objects.requireNonNull(kind, "kind");
        results = List.copyOf(results);
    }
}
