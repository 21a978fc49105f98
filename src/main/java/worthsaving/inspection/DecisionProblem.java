package worthsaving.inspection;

/**
 * A choice among actions whose money depends on an uncertain state (Raiffa and Schlaifer 1961, Applied
 * Statistical Decision Theory). Nothing here knows of cars.
 *
 * @param prior probability of each state, adding up to 1
 * @param payoffs money by action and state
 */
public record DecisionProblem(double[] prior, double[][] payoffs) {

    public DecisionProblem {
        if (payoffs.length == 0) {
            throw new IllegalArgumentException("a decision needs at least one action");
        }
        double sum = 0;
        for (double p : prior) {
            sum += p;
        }
        if (Math.abs(sum - 1) > 1e-9) {
            throw new IllegalArgumentException("the states' probabilities must add up to 1, not " + sum);
        }
        for (double[] action : payoffs) {
            requireLength(action.length, prior.length);
        }
    }

    /** Greatest expected money without looking. */
    public double value() {
        return best(prior);
    }

    /** Action of the greatest expected money; the first of equals. */
    public int bestAction() {
        return bestAction(prior);
    }

    /** Expected money when the state is known before choosing. */
    public double valueWithPerfectInformation() {
        double sum = 0;
        for (int s = 0; s < prior.length; s++) {
            double best = Double.NEGATIVE_INFINITY;
            for (double[] action : payoffs) {
                best = Math.max(best, action[s]);
            }
            sum += prior[s] * best;
        }
        return sum;
    }

    /** What knowing the state is worth, its cost apart; never negative. */
    public double expectedValueOfPerfectInformation() {
        return Math.max(0, valueWithPerfectInformation() - value());
    }

    /**
     * Expected money when a signal is seen before choosing.
     *
     * @param likelihood probability of each signal in each state, by signal and state; the signals of a
     *     state add up to 1
     */
    public double valueWithSignal(double[][] likelihood) {
        checkSignals(likelihood);
        double sum = 0;
        for (double[] signal : likelihood) {
            sum += best(joint(signal));
        }
        return sum;
    }

    /** What seeing the signal is worth, its cost apart; never negative. */
    public double expectedValueOfSignal(double[][] likelihood) {
        return Math.max(0, valueWithSignal(likelihood) - value());
    }

    /**
     * The same for a finding that is present or absent.
     *
     * @param present probability in each state
     */
    public double expectedValueOfFinding(double[] present) {
        requireLength(present.length, prior.length);
        return Math.max(0, best(joint(present)) + best(joint(complement(present))) - value());
    }

    /** Probability of a signal. */
    public double chance(double[] likelihood) {
        double sum = 0;
        for (double p : joint(likelihood)) {
            sum += p;
        }
        return sum;
    }

    /** Action to take once the signal has been seen. */
    public int bestActionAfter(double[] likelihood) {
        return bestAction(joint(likelihood));
    }

    /** max over actions of the sum over states of weight x money; weights need not add up to 1. */
    double best(double[] weights) {
        return expected(bestAction(weights), weights);
    }

    double[] joint(double[] likelihood) {
        double[] joint = new double[prior.length];
        for (int s = 0; s < joint.length; s++) {
            joint[s] = prior[s] * likelihood[s];
        }
        return joint;
    }

    static double[] complement(double[] likelihood) {
        double[] other = new double[likelihood.length];
        for (int s = 0; s < other.length; s++) {
            other[s] = 1 - likelihood[s];
        }
        return other;
    }

    private int bestAction(double[] weights) {
        int best = 0;
        double most = Double.NEGATIVE_INFINITY;
        for (int a = 0; a < payoffs.length; a++) {
            double money = expected(a, weights);
            if (money > most) {
                best = a;
                most = money;
            }
        }
        return best;
    }

    private double expected(int action, double[] weights) {
        double sum = 0;
        for (int s = 0; s < weights.length; s++) {
            sum += weights[s] * payoffs[action][s];
        }
        return sum;
    }

    private void checkSignals(double[][] likelihood) {
        double[] total = new double[prior.length];
        for (double[] signal : likelihood) {
            requireLength(signal.length, prior.length);
            for (int s = 0; s < total.length; s++) {
                total[s] += signal[s];
            }
        }
        for (double t : total) {
            if (Math.abs(t - 1) > 1e-9) {
                throw new IllegalArgumentException("the signals of each state must add up to 1, not " + t);
            }
        }
    }

    private static void requireLength(int length, int states) {
        if (length != states) {
            throw new IllegalArgumentException("one figure for each of " + states + " states, not " + length);
        }
    }
}
