package worthsaving.diagnosis;

import java.util.List;

/** The findings have probability zero under the catalogue. */
public final class ImpossibleEvidenceException extends RuntimeException {

    private static final long serialVersionUID = 1L;

    private final transient List<String> conflicting;

    ImpossibleEvidenceException(Outcome.Impossible outcome) {
        super(outcome.message());
        conflicting = outcome.conflicting();
    }

    /** A smallest set of findings and items that cannot all hold. */
    public List<String> conflicting() {
        return conflicting;
    }
}
