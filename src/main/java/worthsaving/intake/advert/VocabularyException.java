package worthsaving.intake.advert;

import java.util.List;

/** The vocabulary files hold faults; all of them are listed, each with file and line. */
public final class VocabularyException extends RuntimeException {

    private static final long serialVersionUID = 1L;

    private final List<String> faults;

    VocabularyException(List<String> faults) {
        super("the advert vocabulary cannot be used:\n" + String.join("\n", faults));
        this.faults = List.copyOf(faults);
    }

    /** One line each, such as {@code "symptoms.csv, line 12: ..."}. */
    public List<String> faults() {
        return List.copyOf(faults);
    }
}
