package worthsaving.teardown;

import worthsaving.quantity.Hours;

/**
 * What a teardown reckons with beside the money lines of the deal.
 *
 * @param closingShare share of an access step's hours that closing it again takes: due once, however the car is
 *     finished, and not at all when it is sold in pieces
 * @param look time to look at an item that is laid open, and to write down what was seen
 */
public record TeardownTerms(double closingShare, Hours look) {

    /** Expert guesses from memory, not measured: closing takes as long as opening, a look a quarter of an hour. */
    public static final TeardownTerms USUAL = new TeardownTerms(0.5, Hours.of(0.25));

    public TeardownTerms {
        if (!(closingShare >= 0 && closingShare <= 1)) {
            throw new IllegalArgumentException("the closing share must lie in 0 to 1, not " + closingShare);
        }
    }
}
