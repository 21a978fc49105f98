package worthsaving.ranking;

import worthsaving.vehicle.Listing;

/** Outcome of judging one listing. */
public sealed interface Judged {

    Listing listing();

    /** It could be judged. */
    record Done(Appraisal appraisal) implements Judged {

        @Override
        public Listing listing() {
            return appraisal.listing();
        }
    }

    /** It could not, and why; {@code mend} says what would help. */
    record Refused(Listing listing, String reason, String mend) implements Judged {}
}
