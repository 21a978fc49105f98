package worthsaving.diagnosis.inference;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/**
 * The compiled shape of an exact computation: which table goes to which bucket and which index of a
 * bucket meets which index of a table. It depends on the scopes only, so it serves every set of
 * numbers over the same scopes. Source: Dechter (1999), Artificial Intelligence 113:41 (bucket
 * elimination, bucket-tree propagation).
 */
public final class BucketTree {

    /** Largest number of entries over all buckets, as a power of two: 32 MB of doubles. */
    public static final int WIDTH_GUARD = 22;

    /** One variable with what was still joined to it when it was eliminated. */
    record Bucket(int variable, int[] separator, int parent, int[] tables, int[][] tableIndex, int[] indexInParent) {

        int entries() {
            return 2 << separator.length;
        }
    }

    private final Bucket[] buckets;
    private final int[] position;
    private final int[][] childrenOf;
    private final long entries;

    private BucketTree(Bucket[] buckets, int[] position, int[][] childrenOf, long entries) {
        this.buckets = buckets;
        this.position = position;
        this.childrenOf = childrenOf;
        this.entries = entries;
    }

    /** Every variable alike, default guard. */
    public static Optional<BucketTree> compile(int variables, List<Table> tables) {
        return compile(variables, tables, new int[variables], WIDTH_GUARD);
    }

    /**
     * @param stage by variable; all of a lower stage are summed out before any of a higher one, so that
     *     the variables of the highest stage come first in {@link Calibrated#conditional}
     * @param guard limit on the number of entries, as a power of two
     * @return empty when more entries would be needed than the guard allows
     */
    public static Optional<BucketTree> compile(int variables, List<Table> tables, int[] stage, int guard) {
        int[] order = EliminationOrder.minFill(variables, tables, stage);
        return new Compiler(order, tables).compile(guard);
    }

    /** One upward and one downward pass over the tables, which must have the scopes compiled for. */
    public Calibrated calibrate(List<Table> tables) {
        return Calibrated.of(this, tables);
    }

    /**
     * Natural logarithm of the sum of the product of the tables, by the upward pass alone; minus infinity
     * when it is zero.
     */
    public double logPartition(List<Table> tables) {
        return Calibrated.upward(this, tables, new double[buckets.length][]);
    }

    /** Entries over all buckets: the cost of a pass. */
    public long entries() {
        return entries;
    }

    int size() {
        return buckets.length;
    }

    Bucket bucket(int k) {
        return buckets[k];
    }

    int[] children(int k) {
        return childrenOf[k];
    }

    int positionOf(int variable) {
        return position[variable];
    }

    private static final class Compiler {
        private final int n;
        private final int[] order;
        private final int[] position;
        private final List<Table> tables;
        private final int[][] tablesOf;
        private final int[][] childrenOf;
        private final long[][] scope;

        Compiler(int[] order, List<Table> tables) {
            this.n = order.length;
            this.order = order;
            this.tables = tables;
            position = new int[n];
            for (int k = 0; k < n; k++) {
                position[order[k]] = k;
            }
            scope = new long[n][(n + 63) >> 6];
            tablesOf = new int[n][0];
            childrenOf = new int[n][0];
        }

        Optional<BucketTree> compile(int guard) {
            for (int t = 0; t < tables.size(); t++) {
                int first = n;
                for (int v : tables.get(t).scope()) {
                    first = Math.min(first, position[v]);
                }
                for (int v : tables.get(t).scope()) {
                    scope[first][position[v] >> 6] |= 1L << position[v];
                }
                tablesOf[first] = append(tablesOf[first], t);
            }
            int[][] separators = new int[n][];
            int[] parents = new int[n];
            long entries = 0;
            for (int k = 0; k < n; k++) {
                scope[k][k >> 6] &= ~(1L << k);
                separators[k] = members(scope[k]);
                entries += separators[k].length > 40 ? Long.MAX_VALUE >> 8 : 2L << separators[k].length;
                if (entries > 1L << guard) {
                    return Optional.empty();
                }
                parents[k] = separators[k].length == 0 ? -1 : separators[k][0];
                if (parents[k] >= 0) {
                    for (int w = 0; w < scope[k].length; w++) {
                        scope[parents[k]][w] |= scope[k][w];
                    }
                    childrenOf[parents[k]] = append(childrenOf[parents[k]], k);
                }
            }
            return Optional.of(new BucketTree(buckets(separators, parents), position, childrenOf, entries));
        }

        private Bucket[] buckets(int[][] separators, int[] parents) {
            Bucket[] buckets = new Bucket[n];
            for (int k = 0; k < n; k++) {
                int[][] tableIndex = new int[tablesOf[k].length][];
                for (int t = 0; t < tableIndex.length; t++) {
                    int[] places = tables.get(tablesOf[k][t]).scope().clone();
                    for (int p = 0; p < places.length; p++) {
                        places[p] = position[places[p]];
                    }
                    tableIndex[t] = index(k, separators[k], places);
                }
                int[] inParent = parents[k] < 0
                        ? new int[0]
                        : index(parents[k], separators[parents[k]], separators[k]);
                buckets[k] = new Bucket(order[k], separators[k], parents[k], tablesOf[k], tableIndex, inParent);
            }
            return buckets;
        }

        /** For each joint state of (own, separator): the index into a table over {@code places}. */
        private static int[] index(int own, int[] separator, int[] places) {
            int[] index = new int[2 << separator.length];
            for (int b = 0; b <= separator.length; b++) {
                int at = b == 0 ? own : separator[b - 1];
                int stride = 0;
                for (int p = 0; p < places.length; p++) {
                    if (places[p] == at) {
                        stride = 1 << p;
                    }
                }
                int half = 1 << b;
                for (int i = 0; i < half; i++) {
                    index[half + i] = index[i] + stride;
                }
            }
            return index;
        }

        private static int[] append(int[] list, int value) {
            int[] longer = Arrays.copyOf(list, list.length + 1);
            longer[list.length] = value;
            return longer;
        }

        private static int[] members(long[] set) {
            int count = 0;
            for (long word : set) {
                count += Long.bitCount(word);
            }
            int[] members = new int[count];
            int at = 0;
            for (int w = 0; w < set.length; w++) {
                for (long rest = set[w]; rest != 0; rest &= rest - 1) {
                    members[at++] = (w << 6) + Long.numberOfTrailingZeros(rest);
                }
            }
            return members;
        }
    }
}
