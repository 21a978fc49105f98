package worthsaving.ranking;

/**
 * What a set of cars may take at once; infinite where there is no limit.
 *
 * @param cash laid out before any of them brings money back, in the candidates' currency
 * @param bays cars in the workshop at once
 * @param hours own hours
 */
public record Budget(double cash, double bays, double hours) {

    public static final Budget NONE =
            new Budget(Double.POSITIVE_INFINITY, Double.POSITIVE_INFINITY, Double.POSITIVE_INFINITY);

    public Budget {
        if (!(cash >= 0) || !(bays >= 0) || !(hours >= 0)) {
            throw new IllegalArgumentException(
                    "cash, bays and hours must be zero or more, not " + cash + ", " + bays + ", " + hours);
        }
    }

    public Budget withCash(double most) {
        return new Budget(most, bays, hours);
    }

    public Budget withBays(double most) {
        return new Budget(cash, most, hours);
    }

    public Budget withHours(double most) {
        return new Budget(cash, bays, most);
    }
}
