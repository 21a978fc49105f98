package worthsaving.deal;

import worthsaving.quantity.Money;

/**
 * What a price costs once premium, tax and fees are on it:
 * cost = price (1 + premium) (1 + tax) + fees. Common practice, no source; the local tax office rules.
 *
 * @param premium buyer premium as a share of the price, zero or more
 * @param tax sales or use tax as a share of price and premium, zero or more
 * @param fees gate, document and online fees
 */
public record PriceTerms(double premium, double tax, Money fees) {

    public PriceTerms {
        if (!(premium >= 0 && premium < 10) || !(tax >= 0 && tax < 10)) {
            throw new IllegalArgumentException(
                    "premium and tax are shares of the price (0.06 for 6 %), not " + premium + " and " + tax);
        }
    }

    public static PriceTerms taxed(double tax, Money fees) {
        return new PriceTerms(0, tax, fees);
    }

    /** What one unit of price costs, fees apart. */
    public double perUnit() {
        return (1 + premium) * (1 + tax);
    }

    public Money costOf(Money price) {
        return price.times(perUnit()).plus(fees);
    }

    /** The price that costs this much; negative when the fees alone cost more. */
    public Money priceFor(Money cost) {
        return cost.minus(fees).times(1 / perUnit());
    }
}
