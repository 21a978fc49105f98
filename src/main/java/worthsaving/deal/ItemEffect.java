package worthsaving.deal;

/**
 * What one failure item does to the best way out.
 *
 * @param item id
 * @param probability that it has failed
 * @param profitIfFailed expected profit given that it has failed, NaN when it cannot have
 * @param profitIfSound expected profit given that it has not, NaN when it must have
 */
public record ItemEffect(String item, String name, double probability, double profitIfFailed, double profitIfSound) {

    /** How much of the expected profit hangs on it: probability x what its failure costs. */
    public double weight() {
        double cost = profitIfSound - profitIfFailed;
        return Double.isNaN(cost) ? 0 : probability * cost;
    }
}
