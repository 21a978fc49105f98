package worthsaving.desktop.teardown;

import java.util.Optional;
import worthsaving.casebook.CaseFile;
import worthsaving.ranking.Judged;
import worthsaving.ranking.ShopQuote;
import worthsaving.teardown.Advice;
import worthsaving.teardown.OwnerJob;

/**
 * What is known of a teardown.
 *
 * @param file the case that was reckoned
 * @param seen what came out
 * @param refused why nothing did
 */
public record TeardownPicture(CaseFile file, Optional<Seen> seen, Optional<Judged.Refused> refused) {

    /**
     * @param quote for the owner, of what is left to do; empty when nothing is suspected any more or there is no owner
     * @param job what is on the owner's bill; empty when there is no owner
     */
    public record Seen(Advice advice, Optional<ShopQuote> quote, Optional<OwnerJob> job) {}
}
