package worthsaving.diagnosis.inference;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/** Lays tables and messages out over the buckets of an elimination order. */
final class BucketCompiler {

    private static final int HOPELESS = 40;

    /** Something that comes into a bucket: its number and the positions of its variables. */
    private record Incoming(int source, int[] places) {}

    private final int n;
    private final int[] order;
    private final int[] position;
    private final boolean[] or;
    private final List<Table> tables;
    private final List<List<Incoming>> incoming = new ArrayList<>();
    private final int[] outcome;
    private final long[][] scope;

    BucketCompiler(int[] order, Factors factors) {
        this.n = order.length;
        this.order = order;
        this.tables = factors.tables();
        position = new int[n];
        or = new boolean[n];
        outcome = new int[n];
        Arrays.fill(outcome, -1);
        for (int k = 0; k < n; k++) {
            position[order[k]] = k;
            or[k] = factors.ors().get(order[k]);
            incoming.add(new ArrayList<>());
        }
        scope = new long[n][(n + 63) >> 6];
    }

    Optional<BucketTree> compile(int guard) {
        placeTables();
        int[][] separators = new int[n][];
        long entries = 0;
        for (int k = 0; k < n; k++) {
            scope[k][k >> 6] &= ~(1L << k);
            separators[k] = members(scope[k]);
            if (separators[k].length > HOPELESS) {
                return Optional.empty();
            }
            entries += 2L << separators[k].length;
            if (entries > 1L << guard) {
                return Optional.empty();
            }
            if (separators[k].length > 0) {
                int parent = separators[k][0];
                for (int w = 0; w < scope[k].length; w++) {
                    scope[parent][w] |= scope[k][w];
                }
                incoming.get(parent).add(new Incoming(~k, separators[k]));
            }
        }
        BucketTree.Bucket[] buckets = new BucketTree.Bucket[n];
        for (int k = 0; k < n; k++) {
            buckets[k] = bucket(k, separators[k]);
        }
        return Optional.of(new BucketTree(buckets, entries));
    }

    private void placeTables() {
        for (int t = 0; t < tables.size(); t++) {
            int[] places = tables.get(t).scope().clone();
            int first = n;
            for (int p = 0; p < places.length; p++) {
                places[p] = position[places[p]];
                first = Math.min(first, places[p]);
            }
            for (int place : places) {
                scope[first][place >> 6] |= 1L << place;
            }
            if (places.length == 1 && or[first]) {
                outcome[first] = t;
            } else {
                incoming.get(first).add(new Incoming(t, places));
            }
        }
    }

    private BucketTree.Bucket bucket(int k, int[] separator) {
        int[] bits = new int[separator.length + 1];
        bits[0] = k;
        System.arraycopy(separator, 0, bits, 1, separator.length);
        List<Incoming> plain = new ArrayList<>();
        List<Incoming> overOrs = new ArrayList<>();
        for (Incoming in : incoming.get(k)) {
            (Arrays.stream(in.places()).anyMatch(p -> or[p]) ? overOrs : plain).add(in);
        }
        overOrs.sort(Comparator.comparingInt(in -> -in.places().length));
        Merge[] merges = new Merge[overOrs.size()];
        boolean[] met = new boolean[bits.length];
        for (int m = 0; m < merges.length; m++) {
            merges[m] = merge(overOrs.get(m), bits, met);
        }
        int[] sources = new int[plain.size()];
        int[][] index = new int[plain.size()][];
        for (int p = 0; p < sources.length; p++) {
            sources[p] = plain.get(p).source();
            index[p] = subsets(strides(plain.get(p), bits));
        }
        return new BucketTree.Bucket(order[k], separator, outcome[k], merges, sources, index);
    }

    /** @param met by bit: ORs that have come in; those of this one are added */
    private Merge merge(Incoming in, int[] bits, boolean[] met) {
        int[] strides = strides(in, bits);
        Offsets base = new Offsets();
        Offsets both = new Offsets();
        Offsets fresh = new Offsets();
        for (int b = 0; b < bits.length; b++) {
            if (!or[bits[b]] || (met[b] && strides[b] == 0)) {
                base.add(1 << b, strides[b]);
            } else if (strides[b] > 0) {
                (met[b] ? both : fresh).add(1 << b, strides[b]);
                met[b] = true;
            }
        }
        return new Merge(
                in.source(), base.own(), base.other(), both.own(), both.other(), fresh.own(), fresh.other());
    }

    /** By bit of the bucket: what it adds to the index of the incoming table, 0 when it is not there. */
    private static int[] strides(Incoming in, int[] bits) {
        int[] strides = new int[bits.length];
        for (int b = 0; b < bits.length; b++) {
            for (int p = 0; p < in.places().length; p++) {
                if (in.places()[p] == bits[b]) {
                    strides[b] = 1 << p;
                }
            }
        }
        return strides;
    }

    /** The sums of all subsets of the steps, subset number s at index s. */
    private static int[] subsets(int[] steps) {
        int[] sums = new int[1 << steps.length];
        for (int b = 0; b < steps.length; b++) {
            int half = 1 << b;
            for (int i = 0; i < half; i++) {
                sums[half + i] = sums[i] + steps[b];
            }
        }
        return sums;
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

    /** Steps of the same bits in two indices. */
    private static final class Offsets {
        private int[] own = new int[0];
        private int[] other = new int[0];

        void add(int ownStep, int otherStep) {
            own = Arrays.copyOf(own, own.length + 1);
            own[own.length - 1] = ownStep;
            other = Arrays.copyOf(other, other.length + 1);
            other[other.length - 1] = otherStep;
        }

        int[] own() {
            return subsets(own);
        }

        int[] other() {
            return subsets(other);
        }
    }
}
