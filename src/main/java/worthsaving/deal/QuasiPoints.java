package worthsaving.deal;

import java.util.HashMap;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import org.hipparchus.random.SobolSequenceGenerator;
import worthsaving.quantity.Seed;

/**
 * Columns of a Sobol sequence, handed out by the name of the quantity they drive. A name gets the same
 * column in every car and at every setting, so that two assessments differ by their inputs and not by
 * their numbers (common random numbers); only where two names of one car fall on the same column does
 * the later one move to the next.
 *
 * <p>Over all n = 2^m points a column holds each of the levels 0 to n - 1 once; level k stands for the
 * probability (k + 1/2)/n. The digital shift that belongs to the name keeps that (Owen 1995, randomly
 * permuted (t,m,s)-nets). Directions: Joe and Kuo (2008), as in Hipparchus. A column is linear over
 * GF(2), so it is built from the m points whose Gray code has a single bit.
 */
final class QuasiPoints {

    private static final int DIMENSIONS = 4_096;
    /** The first columns are the best spread; they go to what matters most. */
    private static final int RESERVED = 8;
    private static final int BITS = 16;

    /** Holds the directions from first use on. */
    private static final class Directions {
        static final int[][] BY_BIT = read();

        private static int[][] read() {
            SobolSequenceGenerator sobol = new SobolSequenceGenerator(DIMENSIONS);
            int[][] directions = new int[BITS][DIMENSIONS];
            for (int bit = 0; bit < BITS; bit++) {
                double[] point = sobol.skipTo((1 << bit + 1) - 1);
                for (int d = 0; d < DIMENSIONS; d++) {
                    directions[bit][d] = (int) (point[d] * (1 << BITS));
                }
            }
            return directions;
        }
    }

    /** A column is 8 kB at the usual number of points, and cars have hundreds in common. */
    private record Column(String name, int dimension) {}

    private record Book(int points, Seed seed, Map<Column, char[]> columns) {}

    /** Of the last number of points and seed asked for; more than one is rarely in use. */
    private static volatile Book lastBook = new Book(0, Seed.DEFAULT, Map.of());

    private final int points;
    private final Seed seed;
    private final Map<Column, char[]> columns;
    private final Map<String, char[]> given = new HashMap<>();
    private final boolean[] taken = new boolean[DIMENSIONS];

    /** @param first names for the best columns, in order of weight */
    QuasiPoints(int points, Seed seed, String... first) {
        if (first.length > RESERVED) {
            throw new IllegalArgumentException("only " + RESERVED + " columns are reserved");
        }
        this.points = points;
        this.seed = seed;
        this.columns = shelf(points, seed);
        for (int i = 0; i < first.length; i++) {
            given.put(first[i], shared(first[i], i));
        }
    }

    private static Map<Column, char[]> shelf(int points, Seed seed) {
        Book book = lastBook;
        if (book.points() != points || !book.seed().equals(seed)) {
            book = new Book(points, seed, new ConcurrentHashMap<>());
            lastBook = book;
        }
        return book.columns();
    }

    /** Levels of the points for this quantity; not to be changed. */
    char[] column(String name) {
        char[] column = given.get(name);
        if (column == null) {
            column = shared(name, free(name));
            given.put(name, column);
        }
        return column;
    }

    private char[] shared(String name, int dimension) {
        return columns.computeIfAbsent(new Column(name, dimension), c -> build(name, dimension));
    }

    private int free(String name) {
        int at = RESERVED + (int) Math.floorMod(mix(Seed.DEFAULT.derive(name).value()), (long) DIMENSIONS - RESERVED);
        while (taken[at]) {
            at = at + 1 == DIMENSIONS ? RESERVED : at + 1;
        }
        taken[at] = true;
        return at;
    }

    private char[] build(String name, int dimension) {
        int shift = (int) (mix(seed.derive(name).value()) >>> 48) & points - 1;
        int drop = BITS - Integer.numberOfTrailingZeros(points);
        char[] column = new char[points];
        column[0] = (char) shift;
        int before = 0;
        // Bit b of the point's number flips bits b and b - 1 of its Gray code.
        for (int bit = 0; 1 << bit < points; bit++) {
            int direction = Directions.BY_BIT[bit][dimension] >>> drop;
            int flip = direction ^ before;
            int half = 1 << bit;
            for (int i = 0; i < half; i++) {
                column[half + i] = (char) (column[i] ^ flip);
            }
            before = direction;
        }
        return column;
    }

    /** Finaliser of SplitMix64: the low bits of the hash are not spread well enough alone. */
    private static long mix(long z) {
        long a = (z ^ z >>> 30) * 0xbf58476d1ce4e5b9L;
        long b = (a ^ a >>> 27) * 0x94d049bb133111ebL;
        return b ^ b >>> 31;
    }
}
