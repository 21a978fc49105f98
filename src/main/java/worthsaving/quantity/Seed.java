package worthsaving.quantity;

import java.nio.charset.StandardCharsets;
import java.util.SplittableRandom;

/**
 * A reproducible source of randomness. Streams are derived by name, so that adding one consumer
 * never shifts the numbers another one sees, on any number of threads.
 */
public record Seed(long value) {

    private static final long FNV_OFFSET = 0xcbf29ce484222325L;
    private static final long FNV_PRIME = 0x100000001b3L;

    public static final Seed DEFAULT = new Seed(20260101L);

    /** The seed of the stream called {@code name}. FNV-1a 64 bit (Fowler, Noll and Vo) over the name. */
    public Seed derive(String name) {
        long hash = FNV_OFFSET ^ value;
        for (byte b : name.getBytes(StandardCharsets.UTF_8)) {
            hash = (hash ^ (b & 0xff)) * FNV_PRIME;
        }
        return new Seed(hash);
    }

    public SplittableRandom generator() {
        return new SplittableRandom(value);
    }
}
