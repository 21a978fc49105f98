package worthsaving.deal;

import worthsaving.quantity.Money;
import worthsaving.quantity.Source;

/**
 * Figures for an owner who has none: what an ageing car needs a year and what it loses a year. Guesses
 * from memory for a private car in the United States, at an independent shop of USD 130 an hour; where the
 * shop's hour costs more, or is counted in another currency, so do they. Each is shown as a guess and can be
 * replaced.
 */
public final class KeeperGuesses {

    public static final Source SOURCE = Source.guess("expert guess from memory, order of magnitude");

    /** Share of its value a mended car loses in a year; 12 to 15 % is the usual guess. */
    public static final double LOSS_PER_YEAR = 0.135;

    private static final int[] FROM_AGE = {0, 4, 7, 10, 13, 16};
    private static final double[] A_YEAR = {250, 500, 850, 1_150, 1_450, 1_800};

    private static final double SHOP_HOUR = 130;

    private KeeperGuesses() {}

    /**
     * Expected unplanned repairs over the coming months of a car of this age.
     *
     * @param shopHour what an independent shop asks for an hour, most likely
     */
    public static Money otherRepairs(double ageYears, int months, Money shopHour) {
        if (!(ageYears >= 0) || months < 0) {
            throw new IllegalArgumentException("age and months must be zero or more, not " + ageYears + ", " + months);
        }
        double sum = 0;
        for (int m = 0; m < months; m++) {
            sum += aYear(ageYears + (m + 0.5) / 12) / 12;
        }
        return shopHour.times(sum / SHOP_HOUR);
    }

    /** Value after some months at the usual loss, never below scrap. */
    public static Money endValue(Money value, int months, Money scrap) {
        Money later = value.times(Math.pow(1 - LOSS_PER_YEAR, months / 12.0));
        return later.compareTo(scrap) > 0 ? later : scrap;
    }

    private static double aYear(double age) {
        int band = FROM_AGE.length - 1;
        while (age < FROM_AGE[band]) {
            band--;
        }
        return A_YEAR[band];
    }
}
