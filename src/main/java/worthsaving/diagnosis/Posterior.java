package worthsaving.diagnosis;

/** The distribution of the items given evidence, however it was worked out. */
interface Posterior {

    /** Natural logarithm of P(evidence, at most one of each exclusive group); minus infinity for zero. */
    double logWeight();

    double marginal(int item);

    /** P(finding present); the evidence must not speak of it. */
    double chance(String finding);

    /** Joint distribution of a few items; bit k of an index stands for {@code items[k]}. */
    double[] joint(int[] items);

    /** Joint states of the items; made when asked for and not kept here, since it can be large. */
    JointStates states();

    /** Half-width of a 95 % interval that holds for every marginal by itself; zero when exact. */
    double error();

    default boolean possible() {
        return logWeight() != Double.NEGATIVE_INFINITY;
    }
}
