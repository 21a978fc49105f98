package worthsaving.deal;

import worthsaving.quantity.Money;

/** Rules people use instead of a full sum, for comparison beside it. */
public final class RulesOfThumb {

    private RulesOfThumb() {}

    /** The insurers' total loss formula: repair + salvage is at least the value before the damage. */
    public static boolean totalLoss(Money repair, Money salvage, Money value) {
        return repair.plus(salvage).compareTo(value) >= 0;
    }

    /** A threshold rule such as Iowa's 70 %: the repair costs more than a share of the value. */
    public static boolean repairExceeds(Money repair, double share, Money value) {
        return repair.compareTo(value.times(share)) > 0;
    }

    /** Buy at most a share of the running value, less the repair; common practice, no source. */
    public static Money mostToPay(Money value, double share, Money repair) {
        return value.times(share).minus(repair);
    }
}
