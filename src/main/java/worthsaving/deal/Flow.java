package worthsaving.deal;

/**
 * One way out at every point, with the price still open: profit before income tax = before - unit x
 * price.
 *
 * @param before everything but the price
 * @param unit what one unit of price costs: premium, tax and the capital it ties up
 * @param ownHours own hours
 * @param ownLabour what they are worth; already taken off {@code before}
 * @param fixed what buying and fetching it costs, the price apart
 * @param cashOut cash laid out before the sale, the price apart
 * @param priceFactor cash laid out per unit of price
 * @param days from purchase to money
 */
record Flow(double[] before, double[] unit, double[] ownHours, double[] ownLabour, double[] fixed,
        double[] cashOut, double[] priceFactor, double[] days) {

    static Flow ofSize(int atoms) {
        return new Flow(new double[atoms], new double[atoms], new double[atoms], new double[atoms],
                new double[atoms], new double[atoms], new double[atoms], new double[atoms]);
    }

    int size() {
        return before.length;
    }

    void copy(int i, Flow from) {
        before[i] = from.before[i];
        unit[i] = from.unit[i];
        ownHours[i] = from.ownHours[i];
        ownLabour[i] = from.ownLabour[i];
        fixed[i] = from.fixed[i];
        cashOut[i] = from.cashOut[i];
        priceFactor[i] = from.priceFactor[i];
        days[i] = from.days[i];
    }

    /** What income tax is taken of, where it is above zero. */
    double taxable(int i, double price) {
        return before[i] - unit[i] * price + ownLabour[i];
    }

    /** Profit at a price after income tax; own labour is not deductible. */
    double profit(int i, double price, double[] incomeTax) {
        double profit = before[i] - unit[i] * price;
        double taxed = profit + ownLabour[i];
        return taxed > 0 ? profit - incomeTax[i] * taxed : profit;
    }

    double[] profits(double price, double[] incomeTax) {
        double[] out = new double[size()];
        for (int i = 0; i < out.length; i++) {
            out[i] = profit(i, price, incomeTax);
        }
        return out;
    }
}
