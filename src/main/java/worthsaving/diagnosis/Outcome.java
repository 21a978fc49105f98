package worthsaving.diagnosis;

import java.util.List;

/** What comes of an attempt to explain the evidence. */
public sealed interface Outcome {

    record Explained(Diagnosis diagnosis) implements Outcome {}

    /**
     * The evidence has probability zero.
     *
     * @param conflicting ids that cannot all hold, while any of them left out would do
     */
    record Impossible(List<String> conflicting) implements Outcome {

        public Impossible {
            conflicting = List.copyOf(conflicting);
        }

        public String message() {
            return "the catalogue holds these to be impossible together: " + String.join(", ", conflicting)
                    + "; look again at one of them, or give its causes a chance above zero in the catalogue";
        }
    }
}
