package worthsaving.repair;

import java.util.Arrays;
import java.util.BitSet;

/** Sets of small numbers as words of 64 bits each, for what is done for every failure pattern. */
final class Bits {

    private Bits() {}

    /** An empty set that holds the numbers below {@code size}. */
    static long[] ofSize(int size) {
        return new long[(size + Long.SIZE - 1) / Long.SIZE];
    }

    /** @param size above every number of the set */
    static long[] of(BitSet set, int size) {
        long[] bits = ofSize(size);
        set.stream().forEach(i -> set(bits, i));
        return bits;
    }

    static void set(long[] bits, int i) {
        bits[i >> 6] |= 1L << i;
    }

    static void clear(long[] bits) {
        Arrays.fill(bits, 0);
    }

    static void clear(long[] bits, int i) {
        bits[i >> 6] &= ~(1L << i);
    }

    static boolean get(long[] bits, int i) {
        return (bits[i >> 6] & 1L << i) != 0;
    }

    static void or(long[] into, long[] other) {
        for (int w = 0; w < into.length; w++) {
            into[w] |= other[w];
        }
    }

    static boolean intersect(long[] a, long[] b) {
        for (int w = 0; w < a.length; w++) {
            if ((a[w] & b[w]) != 0) {
                return true;
            }
        }
        return false;
    }

    static int count(long[] bits) {
        int sum = 0;
        for (long word : bits) {
            sum += Long.bitCount(word);
        }
        return sum;
    }

    /** The least member from a number on, -1 when there is none. */
    static int next(long[] bits, int from) {
        int w = from >> 6;
        if (w >= bits.length) {
            return -1;
        }
        long word = bits[w] & -1L << from;
        while (word == 0) {
            if (++w == bits.length) {
                return -1;
            }
            word = bits[w];
        }
        return (w << 6) + Long.numberOfTrailingZeros(word);
    }

    /** Ascending. */
    static int[] members(long[] bits) {
        int[] members = new int[count(bits)];
        int count = 0;
        for (int i = next(bits, 0); i >= 0; i = next(bits, i + 1)) {
            members[count++] = i;
        }
        return members;
    }
}
