package worthsaving.desktop.car;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import worthsaving.desktop.Texts;
import worthsaving.quantity.Source;

/**
 * How a figure on screen comes about.
 *
 * @param title the figure with its name
 * @param parts from the figure down to where its parts come from
 */
public record Why(String title, List<Part> parts) {

    /** What there is a reason for. */
    public enum Topic { MOST, OPENING, PROFIT, LOSS, BAD, HOURS, DAYS, VALUE, ITEM, COST, CHECK }

    /**
     * One line.
     *
     * @param figure the amount it stands for; blank for a remark
     * @param label how far it can be trusted; empty for what follows from the lines around it
     */
    public record Part(String text, String figure, Optional<Source.Label> label) {

        public Part {
            Objects.requireNonNull(text, "text");
            Objects.requireNonNull(figure, "figure");
            Objects.requireNonNull(label, "label");
        }

        /** As it is read aloud. */
        String spoken() {
            return text + (figure.isBlank() ? "" : ": " + figure)
                    + label.map(l -> " (" + Texts.of("label", l) + ")").orElse("");
        }
    }

    public Why {
        parts = List.copyOf(parts);
    }

    /** Collects lines. */
    static final class Lines {
        private final List<Part> parts = new ArrayList<>();

        Lines say(String text) {
            parts.add(new Part(text, "", Optional.empty()));
            return this;
        }

        Lines say(String text, Source source) {
            parts.add(new Part(source.text().isBlank() ? text : text + ": " + source.text(), "",
                    Optional.of(source.label())));
            return this;
        }

        Lines line(String text, String figure) {
            parts.add(new Part(text, figure, Optional.empty()));
            return this;
        }

        Lines line(String text, String figure, Source.Label label) {
            parts.add(new Part(text, figure, Optional.of(label)));
            return this;
        }

        Why under(String title) {
            return new Why(title, parts);
        }
    }
}
