package worthsaving.intake.advert;

/** A stretch of the advert's text, in UTF-16 characters: from {@code start} up to, without, {@code end}. */
public record Span(int start, int end) {

    public Span {
        if (start < 0 || end < start) {
            throw new IllegalArgumentException("a span runs from 0 upwards, not from " + start + " to " + end);
        }
    }

    /** The words themselves. */
    public String of(String text) {
        return text.substring(start, end);
    }
}
