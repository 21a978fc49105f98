package worthsaving.report.sheet;

/** Whom a sheet is written for. */
public enum Audience {
    FLIPPER("for the buyer"),
    OWNER("for the owner"),
    WORKSHOP("workshop's quote");

    private final String label;

    Audience(String label) {
        this.label = label;
    }

    public String label() {
        return label;
    }
}
