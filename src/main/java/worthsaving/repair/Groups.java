package worthsaving.repair;

import java.util.BitSet;

/** Splits failed items into groups that share neither job, access step nor tool to buy. */
final class Groups {

    /** For each item, the items whose choice of job can bear on its own. */
    private final long[][] neighbours;

    Groups(JobTable table) {
        int items = table.items.length;
        BitSet[] touches = new BitSet[items];
        for (int i = 0; i < items; i++) {
            BitSet reach = (BitSet) table.reach[i].clone();
            int toolsFrom = table.access.size();
            int jobsFrom = toolsFrom + table.tools.length;
            for (int j : table.closedBy[i]) {
                reach.set(jobsFrom + j);
                for (int t : table.jobs[j].tools()) {
                    reach.set(toolsFrom + t);
                }
            }
            touches[i] = reach;
        }
        neighbours = new long[items][];
        for (int i = 0; i < items; i++) {
            neighbours[i] = Bits.ofSize(items);
            for (int k = 0; k < items; k++) {
                if (touches[i].intersects(touches[k])) {
                    Bits.set(neighbours[i], k);
                }
            }
        }
    }

    /**
     * Takes the least item and all that it is connected with out of {@code left}.
     *
     * @param group filled from the front with their numbers
     * @return how many they are, zero when nothing is left
     */
    int take(long[] left, int[] group) {
        int first = Bits.next(left, 0);
        if (first < 0) {
            return 0;
        }
        Bits.clear(left, first);
        group[0] = first;
        int found = 1;
        for (int done = 0; done < found; done++) {
            long[] near = neighbours[group[done]];
            for (int w = 0; w < left.length; w++) {
                for (long word = near[w] & left[w]; word != 0; word &= word - 1) {
                    group[found++] = (w << 6) + Long.numberOfTrailingZeros(word);
                }
                left[w] &= ~near[w];
            }
        }
        return found;
    }
}
