package worthsaving.desktop;

import worthsaving.quantity.Distance;

/** What distances are shown and entered in. Money is in the currency of the market and is not converted. */
public enum Units {
    MILES,
    KILOMETRES;

    public Units other() {
        return this == MILES ? KILOMETRES : MILES;
    }

    /** The number that is shown. */
    public double of(Distance distance) {
        return this == MILES ? distance.miles() : distance.kilometres();
    }

    /** What a number means that was typed. */
    public Distance distance(double number) {
        return this == MILES ? Distance.ofMiles(number) : Distance.ofKilometres(number);
    }

    /** Whole, with the unit, such as {@code 98,000 miles}. */
    public String text(Distance distance) {
        return Texts.of("units.number", Figures.number(of(distance), 0), Texts.of("units", this));
    }
}
