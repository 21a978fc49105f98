package worthsaving.catalog;

/** What a failure item means for the decision or for safety, beyond its cost. */
public enum Flag {
    /** Never recommended, whatever the profit. */
    HARD_STOP,
    /** A person must say yes before it counts as a buy. */
    REVIEW,
    SAFETY,
    HIGH_VOLTAGE,
    TITLE,
    EMISSIONS,
    /** Replacing the part without its cause fails again. */
    ROOT_CAUSE_FIRST,
    /** A cheap look-alike to exclude before the dear item. */
    CHEAP_FIRST,
    /** Cranking or running does further damage. */
    DO_NOT_RUN,
    /** Hours must be capped before starting. */
    OPEN_ENDED,
    /** Done to sell the car, or while the job is open. */
    SALE_PREPARATION,
    WHILE_IN_THERE
}
