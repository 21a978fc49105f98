package worthsaving.repair;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;

/** Splits failed items into groups that share neither job, access step nor tool to buy. */
final class Groups {

    private Groups() {}

    /** For each item, the items whose choice of job can bear on its own. */
    static BitSet[] neighbours(JobTable table) {
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
        BitSet[] neighbours = new BitSet[items];
        for (int i = 0; i < items; i++) {
            neighbours[i] = new BitSet(items);
            for (int k = 0; k < items; k++) {
                neighbours[i].set(k, touches[i].intersects(touches[k]));
            }
        }
        return neighbours;
    }

    static List<BitSet> split(BitSet failed, BitSet[] neighbours) {
        List<BitSet> groups = new ArrayList<>();
        BitSet left = (BitSet) failed.clone();
        for (int i = left.nextSetBit(0); i >= 0; i = left.nextSetBit(i)) {
            groups.add(connected(i, left, neighbours));
        }
        return groups;
    }

    /** Takes the item and all it is connected with out of {@code left}. */
    private static BitSet connected(int item, BitSet left, BitSet[] neighbours) {
        BitSet group = new BitSet(left.size());
        BitSet edge = new BitSet(left.size());
        edge.set(item);
        left.clear(item);
        for (int k = item; k >= 0; k = edge.nextSetBit(0)) {
            edge.clear(k);
            group.set(k);
            BitSet near = (BitSet) neighbours[k].clone();
            near.and(left);
            edge.or(near);
            left.andNot(near);
        }
        return group;
    }
}
