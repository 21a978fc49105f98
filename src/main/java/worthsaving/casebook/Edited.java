package worthsaving.casebook;

import java.time.Instant;
import java.util.Optional;

/**
 * One edit as the log keeps it.
 *
 * @param number ascending in the order of editing
 * @param at when, by the clock of the computer, which may have been wrong
 * @param of the edit that was undone or redone
 * @param label in words, such as "add L01"
 */
public record Edited(long number, Instant at, Kind kind, Optional<Long> of, String label) {

    /** Undoing and redoing are edits too: nothing is ever taken out of the log. */
    public enum Kind { EDIT, UNDO, REDO }
}
