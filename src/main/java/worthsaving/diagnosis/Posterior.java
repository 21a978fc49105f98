package worthsaving.diagnosis;

import java.util.BitSet;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import worthsaving.diagnosis.inference.BestStates;

/** The distribution of the items given evidence, however it was worked out. */
interface Posterior {

    /** Natural logarithm of P(evidence, at most one of each exclusive group); minus infinity for zero. */
    double logWeight();

    double marginal(int item);

    /** P(finding present); the evidence must not speak of it. */
    double chance(String finding);

    /** Joint distribution of a few items; bit k of an index stands for {@code items[k]}. */
    double[] joint(int[] items);

    /** The fewest states that hold {@code mass}; empty when they are more than {@code cap} or cannot be told. */
    Optional<List<BestStates.State>> covering(int cap, double mass);

    /** One draw per point of a sequence. */
    Function<PatternPoints, BitSet> draws();

    /** Half-width of a 95 % interval that holds for every marginal by itself; zero when exact. */
    double error();

    default boolean possible() {
        return logWeight() != Double.NEGATIVE_INFINITY;
    }
}
