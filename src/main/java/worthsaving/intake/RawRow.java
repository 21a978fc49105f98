package worthsaving.intake;

import java.util.List;
import java.util.Optional;

/**
 * A row as it stands in the file.
 *
 * @param line line on which it starts, the first being 1
 * @param cells its cells, quotes taken off, blanks kept
 * @param text the row as written, for handing back; cut when it is too long
 * @param damage why it cannot be trusted, if so
 */
record RawRow(long line, List<String> cells, String text, Optional<Damage> damage) {

    /**
     * What is wrong with the writing of a row.
     *
     * @param cell index of the cell, or -1 for the whole row
     */
    record Damage(int cell, String what, String mend) {}

    boolean blank() {
        return damage.isEmpty() && cells.stream().allMatch(String::isBlank);
    }
}
