package worthsaving.diagnosis;

import java.util.Arrays;
import java.util.BitSet;
import java.util.List;
import worthsaving.diagnosis.inference.NoisyOr;

/**
 * {@link FailureNetwork#findingChance} for many failure patterns at once: each cause of a finding is gone
 * through only in the patterns that hold it.
 */
public final class FindingChances {

    private final FailureNetwork network;
    private final int patterns;
    /** By item: numbers of the patterns in which it has failed. */
    private final int[][] failedIn;

    FindingChances(FailureNetwork network, List<BitSet> patterns) {
        this.network = network;
        this.patterns = patterns.size();
        int[] counts = new int[network.items().size()];
        patterns.forEach(p -> p.stream().forEach(item -> counts[item]++));
        failedIn = new int[counts.length][];
        Arrays.setAll(failedIn, item -> new int[counts[item]]);
        for (int p = this.patterns - 1; p >= 0; p--) {
            BitSet pattern = patterns.get(p);
            for (int item = pattern.nextSetBit(0); item >= 0; item = pattern.nextSetBit(item + 1)) {
                failedIn[item][--counts[item]] = p;
            }
        }
    }

    /**
     * P(finding present | exactly the items of the pattern have failed), by pattern.
     *
     * @throws IllegalArgumentException for a finding that the catalogue does not know
     */
    public double[] of(String finding) {
        NoisyOr or = network.finding(finding);
        double[] chances = new double[patterns];
        Arrays.fill(chances, 1 - or.leak());
        for (int k = 0; k < or.causes().length; k++) {
            double silent = 1 - or.chances()[k];
            for (int p : failedIn[or.causes()[k]]) {
                chances[p] *= silent;
            }
        }
        for (int p = 0; p < patterns; p++) {
            chances[p] = 1 - chances[p];
        }
        return chances;
    }
}
