package worthsaving.repair;

import java.util.Arrays;
import java.util.BitSet;

/** Sets as ascending arrays of indices, without streams: this runs for every failure pattern. */
final class Indices {

    private Indices() {}

    static int[] of(BitSet set) {
        int[] indices = new int[set.cardinality()];
        int count = 0;
        for (int i = set.nextSetBit(0); i >= 0; i = set.nextSetBit(i + 1)) {
            indices[count++] = i;
        }
        return indices;
    }

    /** Positions in ascending {@code where} of those of ascending {@code what} that are there. */
    static int[] positions(int[] what, int[] where) {
        int[] found = new int[Math.min(what.length, where.length)];
        int count = 0;
        int at = 0;
        for (int w : what) {
            while (at < where.length && where[at] < w) {
                at++;
            }
            if (at < where.length && where[at] == w) {
                found[count++] = at;
            }
        }
        return Arrays.copyOf(found, count);
    }
}
