package worthsaving.valuation;

import worthsaving.market.Comparable;

/**
 * What one of the user's comparables tells of the market level.
 *
 * @param weight likeness to the car being valued, 0 to 1
 * @param above how far its price lies above the indexed model's, as a share, haggling and title allowed for
 * @param moves its part of the shift of the ln level; the parts add up to the whole
 */
public record LevelRow(Comparable comparable, double weight, double above, double moves) {

    LevelRow times(double variance) {
        return new LevelRow(comparable, weight, above, moves * variance);
    }
}
