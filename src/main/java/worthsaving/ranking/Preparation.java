package worthsaving.ranking;

/** Outcome of preparing one listing. */
public sealed interface Preparation {

    /** It can be judged at any price. */
    record Ready(PreparedListing listing) implements Preparation {}

    /** It cannot be judged. */
    record Refused(Judged.Refused why) implements Preparation {}
}
