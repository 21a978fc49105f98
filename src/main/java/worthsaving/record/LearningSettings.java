package worthsaving.record;

import java.util.EnumSet;
import java.util.Set;
import worthsaving.deal.Term;

/**
 * What may be learnt from finished cars, and what the beliefs before them are worth.
 *
 * @param off money lines that are not to move
 * @param items whether the priors of failure items may move
 * @param priorCars how many cars the belief about a money line is worth, above 1
 * @param itemPriorCars how many cars the forecast of an item is worth, above 0
 */
public record LearningSettings(Set<Term> off, boolean items, double priorCars, double itemPriorCars) {

    /** Judgement, no source: the built-in ranges are rough, the catalogue's failure rates rest on more. */
    public static final LearningSettings USUAL = new LearningSettings(Set.of(), true, 4, 20);

    public LearningSettings {
        off = Set.copyOf(off);
        if (!(priorCars > 1) || !(itemPriorCars > 0)) {
            throw new IllegalArgumentException("a belief must be worth more than one car and an item's more than none");
        }
    }

    /** The same with one line switched. */
    public LearningSettings with(Term term, boolean on) {
        Set<Term> without = off.isEmpty() ? EnumSet.noneOf(Term.class) : EnumSet.copyOf(off);
        if (on) {
            without.remove(term);
        } else {
            without.add(term);
        }
        return new LearningSettings(without, items, priorCars, itemPriorCars);
    }

    public LearningSettings withItems(boolean on) {
        return new LearningSettings(off, on, priorCars, itemPriorCars);
    }
}
