package worthsaving.intake;

/**
 * Finds repeats among very many texts in little memory: keeps a 64-bit hash and a row number of each,
 * up to {@link #MOST} of them. Two different texts among a million share a hash with probability
 * 3e-8 (birthday bound).
 */
final class SeenBefore {

    static final int MOST = 1_000_000;

    private long[] hashes = new long[1 << 10];
    private int[] rows = new int[1 << 10];
    private int size;

    /** Remembers a text; the row of an earlier equal one, or 0. Once full, new texts are not remembered. */
    long earlier(CharSequence text, long row) {
        long hash = hash(text);
        int mask = hashes.length - 1;
        int i = (int) hash & mask;
        for (; hashes[i] != 0; i = i + 1 & mask) {
            if (hashes[i] == hash) {
                return rows[i];
            }
        }
        if (size < MOST && row < Integer.MAX_VALUE) {
            hashes[i] = hash;
            rows[i] = (int) row;
            size++;
            grow();
        }
        return 0;
    }

    boolean full() {
        return size >= MOST;
    }

    private void grow() {
        if (size * 2 < hashes.length) {
            return;
        }
        long[] oldHashes = hashes;
        int[] oldRows = rows;
        hashes = new long[oldHashes.length * 2];
        rows = new int[hashes.length];
        int mask = hashes.length - 1;
        for (int k = 0; k < oldHashes.length; k++) {
            if (oldHashes[k] != 0) {
                int i = (int) oldHashes[k] & mask;
                while (hashes[i] != 0) {
                    i = i + 1 & mask;
                }
                hashes[i] = oldHashes[k];
                rows[i] = oldRows[k];
            }
        }
    }

    /** FNV-1a 64 bit (Fowler, Noll and Vo) over the UTF-16 units, with a final mix; never 0. */
    private static long hash(CharSequence text) {
        long hash = 0xcbf29ce484222325L;
        for (int i = 0; i < text.length(); i++) {
            hash = (hash ^ text.charAt(i)) * 0x100000001b3L;
        }
        hash ^= hash >>> 32;
        hash *= 0x9e3779b97f4a7c15L;
        hash ^= hash >>> 29;
        return hash == 0 ? 1 : hash;
    }
}
