package worthsaving.diagnosis.inference;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.PriorityQueue;

/**
 * The most probable joint states of the variables of lowest rank, in order, by best-first search: the
 * exact probability of a beginning, times the greatest conditional probability of each variable to come,
 * bounds that of each of its continuations (A*: Hart, Nilsson and Raphael 1968, IEEE Transactions on Systems
 * Science and Cybernetics 4:100).
 */
public final class BestStates {

    /** Probability that may be missing from sums of many small terms. */
    private static final double ROUNDING = 1e-12;

    /** A joint state: the variables that are yes, and its probability. */
    public record State(BitSet yes, double probability) {}

    private record Beginning(double bound, double probability, int length, long[] bits, long serial) {}

    private final Calibrated chain;
    private final int ranks;
    private final PriorityQueue<Beginning> open = new PriorityQueue<>(
            Comparator.comparingDouble(Beginning::bound).reversed().thenComparingLong(Beginning::serial));
    /** By rank: bound on the conditional probability of all from there on. */
    private final double[] toCome;
    private long serial;

    private BestStates(Calibrated chain, int ranks) {
        this.chain = chain;
        this.ranks = ranks;
        this.toCome = new double[ranks + 1];
        toCome[ranks] = 1;
        for (int rank = ranks - 1; rank >= 0; rank--) {
            toCome[rank] = toCome[rank + 1] * chain.likeliest(rank);
        }
        add(1, 0, new long[(chain.variables() + 63) >> 6]);
    }

    private void add(double probability, int length, long[] bits) {
        open.add(new Beginning(probability * toCome[length], probability, length, bits, ++serial));
    }

    /**
     * The fewest states that hold {@code mass} of the probability, best first; empty when more than
     * {@code cap} are needed.
     */
    public static Optional<List<State>> covering(Calibrated chain, int ranks, int cap, double mass) {
        BestStates search = new BestStates(chain, ranks);
        List<State> found = new ArrayList<>();
        double held = 0;
        double enough = mass - ROUNDING;
        while (held < enough) {
            Beginning next = search.open.peek();
            if (next == null) {
                return Optional.of(found);
            }
            if (held + (cap - found.size()) * next.bound() < enough) {
                return Optional.empty();
            }
            int before = found.size();
            search.step(found);
            if (found.size() > before) {
                held += found.get(before).probability();
            }
        }
        return Optional.of(found);
    }

    /** Lengthens the best beginning while it stays the best; reports it when it is complete. */
    private void step(List<State> found) {
        Beginning best = open.poll();
        double probability = best.probability();
        long[] bits = best.bits();
        int length = best.length();
        while (length < ranks) {
            double yes = chain.conditional(length, bits);
            boolean likelier = yes >= 0.5;
            long mask = 1L << length;
            double other = probability * (likelier ? 1 - yes : yes);
            if (other > 0) {
                long[] branch = bits.clone();
                if (!likelier) {
                    branch[length >> 6] |= mask;
                }
                add(other, length + 1, branch);
            }
            probability *= likelier ? yes : 1 - yes;
            if (likelier) {
                bits[length >> 6] |= mask;
            }
            length++;
            Beginning rival = open.peek();
            if (rival != null && rival.bound() > probability * toCome[length]) {
                add(probability, length, bits);
                return;
            }
        }
        found.add(new State(variables(bits), probability));
    }

    private BitSet variables(long[] bits) {
        BitSet yes = new BitSet();
        for (int rank = 0; rank < ranks; rank++) {
            if ((bits[rank >> 6] >>> rank & 1) != 0) {
                yes.set(chain.variableAt(rank));
            }
        }
        return yes;
    }
}
