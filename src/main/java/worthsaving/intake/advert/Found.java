package worthsaving.intake.advert;

import java.util.List;
import java.util.Objects;
import worthsaving.vehicle.Fact;

/**
 * One field as read from an advert.
 *
 * @param words where in the text it was read; empty for what is merely usual
 * @param basis stated in so many words, or guessed
 * @param why for a guess, the reason shown beside it; empty otherwise
 * @param others further readings of the same field, likeliest first, for correcting with one click
 */
public record Found<T>(T value, List<Span> words, Basis basis, String why, List<T> others) {

    /** How the advert supports the value. */
    public enum Basis { STATED, GUESSED }

    public Found {
        Objects.requireNonNull(value, "value");
        Objects.requireNonNull(basis, "basis");
        Objects.requireNonNull(why, "why");
        words = List.copyOf(words);
        others = List.copyOf(others);
    }

    static <T> Found<T> stated(T value, List<Span> words) {
        return new Found<>(value, words, Basis.STATED, "", List.of());
    }

    static <T> Found<T> guessed(T value, List<Span> words, String why) {
        return new Found<>(value, words, Basis.GUESSED, why, List.of());
    }

    Found<T> orElse(List<T> furtherReadings) {
        return new Found<>(value, words, basis, why, furtherReadings);
    }

    public boolean isGuessed() {
        return basis == Basis.GUESSED;
    }

    /** Known when stated, assumed with its reason when guessed. */
    public Fact<T> toFact() {
        return isGuessed() ? Fact.assumed(value, why) : Fact.known(value);
    }
}
