package worthsaving.desktop.teardown;

/** Kinds of line that the journal takes. */
public enum Kind {
    OPENED(true, false),
    FINDING(true, false),
    HOURS(false, true),
    RECEIPT(false, true),
    PART(true, true),
    MENDED(true, false),
    NOTE(false, false),
    DECISION(false, false),
    PHOTO(false, false);

    private final boolean chosen;
    private final boolean figure;

    Kind(boolean chosen, boolean figure) {
        this.chosen = chosen;
        this.figure = figure;
    }

    /** Whether it is about something of the catalogue. */
    boolean chosen() {
        return chosen;
    }

    /** Whether it holds hours or money. */
    boolean figure() {
        return figure;
    }

    /** Whether it is money. */
    boolean money() {
        return this == RECEIPT || this == PART;
    }
}
