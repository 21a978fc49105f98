package worthsaving.valuation;

/**
 * How far prices of one kind of car scatter about the model's middle, as the model itself holds it: of ten cars
 * eight lie between {@code low} and {@code high}.
 *
 * @param low below the middle, as a negative share of it
 * @param high above it
 * @param rows of the price data that hold this make, 0 where cars are not grouped by make
 */
public record ErrorBand(By by, String group, double low, double high, long rows) {

    /** What cars are grouped by. */
    public enum By { AGE, MILEAGE, MAKE }
}
