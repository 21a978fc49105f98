package worthsaving.diagnosis.inference;

import java.util.Arrays;
import java.util.function.IntPredicate;

/**
 * Leaky noisy-OR: P(yes | x) = 1 - (1 - leak) prod over i with x_i = yes of (1 - chance_i).
 * Source: Pearl (1988), Probabilistic Reasoning in Intelligent Systems, 4.3; leak: Henrion (1989).
 *
 * @param leak chance without any cause
 * @param causes variables
 * @param chances chance that the cause alone brings the effect about, one per cause
 */
public record NoisyOr(double leak, int[] causes, double[] chances) {

    public NoisyOr {
        if (causes.length != chances.length) {
            throw new IllegalArgumentException(causes.length + " causes but " + chances.length + " chances");
        }
    }

    /** P(yes) when the causes in {@code state} (bit k for {@code causes[k]}) hold. */
    public double chance(int state) {
        return 1 - silence(state);
    }

    /** P(yes) when the causes for which {@code holds} is true hold. */
    public double chance(IntPredicate holds) {
        double silent = 1 - leak;
        for (int k = 0; k < causes.length; k++) {
            if (holds.test(causes[k])) {
                silent *= 1 - chances[k];
            }
        }
        return 1 - silent;
    }

    /** P(no), computed without cancellation. */
    public double silence(int state) {
        double product = 1 - leak;
        for (int k = 0; k < causes.length; k++) {
            if ((state >> k & 1) != 0) {
                product *= 1 - chances[k];
            }
        }
        return product;
    }

    /** P(child | causes) as a table. */
    public Table given(int child) {
        double[] yes = new double[1 << causes.length];
        for (int s = 0; s < yes.length; s++) {
            yes[s] = chance(s);
        }
        return Table.conditional(child, causes, yes);
    }

    /** The effect seen with a likelihood and summed out: a table over the causes alone. */
    public Table seen(double ifYes, double ifNo) {
        double[] values = new double[1 << causes.length];
        for (int s = 0; s < values.length; s++) {
            double no = silence(s);
            values[s] = ifYes * (1 - no) + ifNo * no;
        }
        return new Table(causes, values);
    }

    /**
     * The same with the causes of known state left out, the failed ones counted into the leak.
     *
     * @param known by variable: 1 yes, 0 no, -1 unknown
     */
    public NoisyOr given(int[] known) {
        int left = 0;
        int[] open = new int[causes.length];
        double[] chance = new double[causes.length];
        double silent = 1 - leak;
        for (int k = 0; k < causes.length; k++) {
            if (known[causes[k]] < 0) {
                open[left] = causes[k];
                chance[left++] = chances[k];
            } else if (known[causes[k]] == 1) {
                silent *= 1 - chances[k];
            }
        }
        return left == causes.length
                ? this
                : new NoisyOr(1 - silent, Arrays.copyOf(open, left), Arrays.copyOf(chance, left));
    }

    /**
     * The effect brought about and told of, when each cause's effect is told of with a chance of its own: leak and
     * chances scaled.
     */
    public NoisyOr told(double mention) {
        return new NoisyOr(leak * mention, causes, Arrays.stream(chances).map(c -> c * mention).toArray());
    }

    /** The effect given that it was not {@link #told}: (1 - c) / (1 - c mention) is 1 less this chance, cause by cause. */
    public NoisyOr untold(double mention) {
        return new NoisyOr(
                untold(leak, mention), causes, Arrays.stream(chances).map(c -> untold(c, mention)).toArray());
    }

    private static double untold(double chance, double mention) {
        return chance == 0 ? 0 : chance * (1 - mention) / (1 - chance * mention);
    }

    /** The causes from {@code from} to {@code to} alone, without leak. */
    NoisyOr part(int from, int to) {
        return new NoisyOr(0, Arrays.copyOfRange(causes, from, to), Arrays.copyOfRange(chances, from, to));
    }

    /** The causes from {@code from} on, and one more that is certain to bring the effect about. */
    NoisyOr restWith(int certainCause, int from) {
        int rest = causes.length - from;
        int[] more = Arrays.copyOfRange(causes, from, causes.length + 1);
        double[] with = Arrays.copyOfRange(chances, from, causes.length + 1);
        more[rest] = certainCause;
        with[rest] = 1;
        return new NoisyOr(leak, more, with);
    }
}
