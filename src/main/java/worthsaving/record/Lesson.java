package worthsaving.record;

import java.util.Locale;
import java.util.Objects;
import worthsaving.catalog.MoneyLine;
import worthsaving.deal.Term;
import worthsaving.quantity.Range;

/**
 * What the finished cars teach about one money line of a deal.
 *
 * @param cars how many taught it
 * @param before belief before the first of them, from the line as it stands
 * @param after belief after the last
 * @param prior where the belief before comes from, in words
 * @param on whether it is used; the user's choice
 */
public record Lesson(Term term, int cars, LogNormal before, LogNormal after, String prior, boolean on) {

    /** A line in percent may be no greater. */
    private static final double MOST = 1_000;

    public Lesson {
        Objects.requireNonNull(term, "term");
        Objects.requireNonNull(prior, "prior");
    }

    /** The learnt line, in the unit of the term. */
    public Range range() {
        Range range = after.range();
        return term.unit() != MoneyLine.Unit.PERCENT ? range
                : new Range(Math.min(range.low(), MOST), Math.min(range.mode(), MOST), Math.min(range.high(), MOST));
    }

    /** Such as "own speed: moved from 103 to 118 by 4 cars". */
    public String words() {
        String moved = cars == 0
                ? String.format(Locale.ROOT, "%.0f; no car has taught anything yet", before.median())
                : String.format(Locale.ROOT, "moved from %.0f to %.0f by %d %s", before.median(), after.median(), cars,
                        cars == 1 ? "car" : "cars");
        return term.label() + ": " + moved + (on ? "" : " (switched off)");
    }
}
