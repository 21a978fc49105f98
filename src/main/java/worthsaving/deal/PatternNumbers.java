package worthsaving.deal;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import worthsaving.deal.Allotment.Run;

/**
 * The different failure patterns among the runs, numbered in order of appearance.
 *
 * @param patterns each once
 * @param ofRun number of each run's pattern
 */
record PatternNumbers(List<BitSet> patterns, int[] ofRun) {

    /** BitSet's own hash tells patterns of a hundred items badly apart. */
    private record Key(BitSet bits) {

        @Override
        public int hashCode() {
            long hash = 1;
            for (int i = bits.nextSetBit(0); i >= 0; i = bits.nextSetBit(i + 1)) {
                hash = (hash + i) * 0x9e3779b97f4a7c15L;
            }
            return (int) (hash >>> 32);
        }
    }

    static PatternNumbers of(List<Run> runs) {
        Map<Key, Integer> numbers = new HashMap<>(2 * runs.size());
        List<BitSet> patterns = new ArrayList<>();
        int[] ofRun = new int[runs.size()];
        for (int r = 0; r < ofRun.length; r++) {
            Integer known = numbers.putIfAbsent(new Key(runs.get(r).pattern()), patterns.size());
            ofRun[r] = known == null ? patterns.size() : known;
            if (known == null) {
                patterns.add(runs.get(r).pattern());
            }
        }
        return new PatternNumbers(List.copyOf(patterns), ofRun);
    }
}
