package worthsaving.sensitivity;

import java.util.function.IntToDoubleFunction;

/**
 * Shapley values of a game, exact over all coalitions: the fair share of each player in what all of
 * them reach together. With the variance explained by a set of inputs as the game they share out a
 * variance even among dependent inputs. Sources: Shapley (1953); Owen (2014), SIAM/ASA Journal on
 * Uncertainty Quantification 2:245; Song, Nelson and Staum (2016).
 */
public final class Shapley {

    private static final int MOST_PLAYERS = 20;

    private Shapley() {}

    /**
     * @param players up to 20
     * @param game worth of a coalition, given as bits; 0 is the empty one
     */
    public static double[] values(int players, IntToDoubleFunction game) {
        if (players < 1 || players > MOST_PLAYERS) {
            throw new IllegalArgumentException("1 to " + MOST_PLAYERS + " players, not " + players);
        }
        double[] worth = new double[1 << players];
        for (int set = 0; set < worth.length; set++) {
            worth[set] = game.applyAsDouble(set);
        }
        double[] weight = new double[players];
        weight[0] = 1.0 / players;
        for (int size = 1; size < players; size++) {
            weight[size] = weight[size - 1] * size / (players - size);
        }
        double[] values = new double[players];
        for (int set = 0; set < worth.length; set++) {
            for (int j = 0; j < players; j++) {
                if ((set >> j & 1) == 0) {
                    values[j] += weight[Integer.bitCount(set)] * (worth[set | 1 << j] - worth[set]);
                }
            }
        }
        return values;
    }
}
