package worthsaving.repair;

import java.util.BitSet;
import java.util.Optional;

/** The cheapest work for sets of items that are given by their positions in one list. */
public final class PatternPlanner {

    private final RepairPlanner planner;
    private final int[] index;

    PatternPlanner(RepairPlanner planner, int[] index) {
        this.planner = planner;
        this.index = index;
    }

    /**
     * @param pattern positions of the failed items in the list
     * @return empty when nothing allowed mends all of them
     */
    public Optional<RepairWork> work(BitSet pattern) {
        BitSet failed = new BitSet();
        for (int i = pattern.nextSetBit(0); i >= 0; i = pattern.nextSetBit(i + 1)) {
            failed.set(index[i]);
        }
        return planner.work(failed);
    }
}
