package worthsaving.deal;

/** What can be done with a car. */
public enum WayOut {
    REPAIR_AND_SELL("repair and sell"),
    SELL_AS_IT_STANDS("sell as it stands"),
    PART_OUT("part out"),
    SCRAP("scrap"),
    WALK_AWAY("do not buy");

    private final String label;

    WayOut(String label) {
        this.label = label;
    }

    public String label() {
        return label;
    }
}
