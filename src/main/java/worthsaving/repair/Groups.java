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
            BitSet reach = new BitSet();
            BitSet tools = new BitSet();
            BitSet jobs = new BitSet();
            for (int j : table.closedBy[i]) {
                reach.or(table.jobs[j].access());
                jobs.set(j);
                for (int t : table.jobs[j].tools()) {
                    tools.set(t);
                }
            }
            table.access.widenByEasing(reach);
            int toolsFrom = table.access.size();
            int jobsFrom = toolsFrom + table.tools.length;
            tools.stream().forEach(t -> reach.set(toolsFrom + t));
            jobs.stream().forEach(j -> reach.set(jobsFrom + j));
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
            BitSet group = new BitSet();
            spread(i, left, neighbours, group);
            groups.add(group);
        }
        return groups;
    }

    private static void spread(int item, BitSet left, BitSet[] neighbours, BitSet group) {
        left.clear(item);
        group.set(item);
        BitSet near = neighbours[item];
        for (int k = near.nextSetBit(0); k >= 0; k = near.nextSetBit(k + 1)) {
            if (left.get(k)) {
                spread(k, left, neighbours, group);
            }
        }
    }
}
