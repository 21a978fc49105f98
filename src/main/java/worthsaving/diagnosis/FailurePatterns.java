package worthsaving.diagnosis;

import java.util.Arrays;
import java.util.BitSet;
import java.util.List;

/**
 * Sets of items that have failed together, with their weights.
 *
 * @param items ids; bit i of a pattern stands for the i-th
 * @param patterns the sets
 * @param weights probability of each pattern, summing to 1
 * @param enumerated posterior probability that the patterns hold when they were enumerated (the rest
 *     spread over them); 1 when they were drawn from the exact posterior
 * @param drawn true when the patterns are equal-weight draws in sequence order, one per point of the
 *     quasi-random sequence; false when they are an enumeration, most probable first
 */
public record FailurePatterns(
        List<String> items, List<BitSet> patterns, double[] weights, double enumerated, boolean drawn) {

    public FailurePatterns {
        items = List.copyOf(items);
        patterns = List.copyOf(patterns);
    }

    /** The first draws, which are well spread by themselves; an enumeration stays whole. */
    public FailurePatterns first(int draws) {
        if (!drawn || draws >= patterns.size()) {
            return this;
        }
        double[] equal = new double[draws];
        Arrays.fill(equal, 1.0 / draws);
        return new FailurePatterns(items, patterns.subList(0, draws), equal, enumerated, true);
    }
}
