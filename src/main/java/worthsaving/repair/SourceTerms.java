package worthsaving.repair;

import java.util.EnumMap;
import java.util.Map;
import worthsaving.catalog.PartSource;
import worthsaving.quantity.Range;
import worthsaving.quantity.Source;

/**
 * What comes with a part from one kind of source.
 *
 * @param comeback chance that the job has to be done again within twelve months, within 0 to 1
 * @param days days until the part is there, zero or more
 */
public record SourceTerms(Range comeback, Range days, Source source) {

    private static final Source GUESS =
            Source.guess("expert estimate from memory, order of magnitude; edit it to your own suppliers");

    public SourceTerms {
        if (comeback.low() < 0 || comeback.high() > 1) {
            throw new IllegalArgumentException("a comeback chance must lie in 0 to 1, not " + comeback);
        }
        if (days.low() < 0) {
            throw new IllegalArgumentException("days to wait must be zero or more, not " + days);
        }
    }

    /** A part that never comes back and is there at once. */
    public static SourceTerms certain() {
        return new SourceTerms(Range.exactly(0), Range.exactly(0), Source.user());
    }

    /** Guesses for a user who has not entered any. */
    public static Map<PartSource, SourceTerms> guessed() {
        Map<PartSource, SourceTerms> terms = new EnumMap<>(PartSource.class);
        terms.put(PartSource.MAKER, guess(new Range(0.01, 0.02, 0.05), new Range(1, 3, 10)));
        terms.put(PartSource.AFTERMARKET, guess(new Range(0.03, 0.06, 0.12), new Range(1, 2, 5)));
        terms.put(PartSource.REBUILT, guess(new Range(0.02, 0.05, 0.10), new Range(3, 6, 14)));
        terms.put(PartSource.USED, guess(new Range(0.06, 0.12, 0.25), new Range(2, 6, 14)));
        terms.put(PartSource.ON_THE_SHELF, guess(new Range(0.02, 0.05, 0.15), Range.exactly(0)));
        return terms;
    }

    private static SourceTerms guess(Range comeback, Range days) {
        return new SourceTerms(comeback, days, GUESS);
    }
}
