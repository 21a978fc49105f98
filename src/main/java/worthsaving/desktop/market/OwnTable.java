package worthsaving.desktop.market;

import java.time.LocalDate;
import java.util.Set;
import java.util.TreeSet;

/**
 * A table of cars that the user has seen priced, word for word, so that nothing of it is lost.
 *
 * @param name of the file, or what a pasted text is called
 * @param day it was read: rows without a day of their own were seen on it
 * @param leftOut lines taken out by hand, the first line of the text being 1
 */
public record OwnTable(String name, LocalDate day, String text, Set<Long> leftOut) {

    public OwnTable {
        leftOut = Set.copyOf(leftOut);
    }

    OwnTable without(long line) {
        Set<Long> more = new TreeSet<>(leftOut);
        more.add(line);
        return new OwnTable(name, day, text, more);
    }
}
