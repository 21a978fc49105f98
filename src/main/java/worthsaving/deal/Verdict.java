package worthsaving.deal;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;

/**
 * The decision in plain words.
 *
 * @param headline one sentence
 * @param reasons the three that weigh most, most important first
 * @param wouldChange what would turn the decision
 */
public record Verdict(Kind kind, String headline, List<String> reasons, List<String> wouldChange) {

    /** What to do. */
    public enum Kind {
        /** The ask, or less, meets the buyer's rule. */
        BUY,
        /** Only a lower price does. */
        BUY_BELOW,
        /** Looking first is worth more than it costs. */
        CHECK_FIRST,
        /** No price worth offering. */
        WALK_AWAY,
        /** Something stands above any profit. */
        HARD_STOP
    }

    public Verdict {
        Objects.requireNonNull(kind, "kind");
        Objects.requireNonNull(headline, "headline");
        reasons = List.copyOf(reasons);
        wouldChange = List.copyOf(wouldChange);
    }

    /** The same verdict behind a check; a hard stop stays one. */
    public Verdict afterCheck(String sentence) {
        if (kind == Kind.HARD_STOP) {
            return this;
        }
        List<String> more = new ArrayList<>(wouldChange);
        more.add(0, "After the check: " + headline);
        return new Verdict(Kind.CHECK_FIRST, sentence, reasons, more);
    }
}
