package worthsaving.diagnosis.inference;

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

    /**
     * One variable with what was still joined to it when it was eliminated. Bit 0 of an index is the
     * variable, bit b + 1 the b-th of the separator.
     *
     * @param separator positions of the buckets of the other variables, ascending
     * @param outcome number of the table that weighs the outcome of an OR, -1 for a plain variable
     * @param merges what comes in over ORs, in the order of combining
     * @param sources what comes in over plain variables alone: table number, or ~bucket for a message
     * @param sourceIndex by source and index of this bucket: the index into the source
     */
    record Bucket(
            int variable, int[] separator, int outcome, Merge[] merges, int[] sources, int[][] sourceIndex) {

        int entries() {
            return 2 << separator.length;
        }
    }

    private final Bucket[] buckets;
    private final long entries;

    BucketTree(Bucket[] buckets, long entries) {
        this.buckets = buckets;
        this.entries = entries;
    }

    /** Every variable alike, default guard. */
    public static Optional<BucketTree> compile(Factors factors) {
        return compile(factors, new int[factors.variables()], WIDTH_GUARD);
    }

    /**
     * @param stage by variable; all of a lower stage are summed out before any of a higher one, so that
     *     the variables of the highest stage come first in {@link Calibrated#conditional}
     * @param guard limit on the number of entries, as a power of two
     * @return empty when more entries would be needed than the guard allows
     */
    public static Optional<BucketTree> compile(Factors factors, int[] stage, int guard) {
        int[] order = EliminationOrder.minFill(factors.variables(), factors.tables(), stage);
        return new BucketCompiler(order, factors).compile(guard);
    }

    /** One upward and one downward pass over the tables, which must have the scopes compiled for. */
    public Calibrated calibrate(List<Table> tables) {
        return new Calibrated(this, new UpwardPass(this, tables));
    }

    /**
     * Natural logarithm of the sum of the product of the tables, by the upward pass alone; minus infinity
     * when it is zero.
     */
    public double logPartition(List<Table> tables) {
        return new UpwardPass(this, tables).logPartition();
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
}
