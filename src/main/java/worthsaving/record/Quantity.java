package worthsaving.record;

/** What is forecast of a car and known once it is finished. */
public enum Quantity {
    /** What the car fetched, in money. */
    VALUE("value", "money"),
    /** All cash laid out for it, price included, in money. */
    COST("cost", "money"),
    /** Own hours. */
    HOURS("hours", "h"),
    /** Days from purchase to money. */
    DAYS("days", "days");

    private final String label;
    private final String unit;

    Quantity(String label, String unit) {
        this.label = label;
        this.unit = unit;
    }

    public String label() {
        return label;
    }

    public String unit() {
        return unit;
    }
}
