package worthsaving.desktop;

import java.util.ArrayList;
import java.util.List;

/**
 * Undo and redo as a stack of immutable states.
 *
 * @param past oldest first
 * @param future nearest last
 */
public record History<T>(List<T> past, T now, List<T> future) {

    private static final int MOST = 500;

    public History {
        past = List.copyOf(past);
        future = List.copyOf(future);
    }

    public static <T> History<T> of(T first) {
        return new History<>(List.of(), first, List.of());
    }

    /** A new state; what was undone before can no longer be redone. The same state again changes nothing. */
    public History<T> push(T next) {
        if (next.equals(now)) {
            return this;
        }
        List<T> more = new ArrayList<>(past.size() == MOST ? past.subList(1, MOST) : past);
        more.add(now);
        return new History<>(more, next, List.of());
    }

    public boolean canUndo() {
        return !past.isEmpty();
    }

    public boolean canRedo() {
        return !future.isEmpty();
    }

    /** One step back, or the same when there is none. */
    public History<T> undo() {
        if (!canUndo()) {
            return this;
        }
        List<T> ahead = new ArrayList<>(future);
        ahead.add(now);
        return new History<>(past.subList(0, past.size() - 1), past.get(past.size() - 1), ahead);
    }

    /** One step forward again, or the same when there is none. */
    public History<T> redo() {
        if (!canRedo()) {
            return this;
        }
        List<T> behind = new ArrayList<>(past);
        behind.add(now);
        return new History<>(behind, future.get(future.size() - 1), future.subList(0, future.size() - 1));
    }
}
