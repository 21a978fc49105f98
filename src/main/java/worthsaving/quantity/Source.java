package worthsaving.quantity;

import java.util.Objects;

/** Where a figure comes from: a label that is always shown, and a text to trace it by. */
public record Source(Label label, String text) {

    /** How far a figure can be trusted, best first. */
    public enum Label { MEASURED, PUBLISHED, COMMON_PRACTICE, GUESS, USER }

    public Source {
        Objects.requireNonNull(label, "label");
        Objects.requireNonNull(text, "text");
    }

    public static Source guess(String text) {
        return new Source(Label.GUESS, text);
    }

    public static Source user() {
        return new Source(Label.USER, "entered by the user");
    }
}
