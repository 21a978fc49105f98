package worthsaving.diagnosis;

import org.hipparchus.random.SobolSequenceGenerator;
import worthsaving.quantity.Seed;

/**
 * Points of a Sobol sequence with a digital shift: the coordinate of an item in point j is the same
 * number whatever the car and the evidence. Hidden variables, and coordinates beyond the sequence's
 * thousand, get pseudo-random numbers by label. Source: Joe and Kuo (2008), SIAM Journal on Scientific
 * Computing 30:2635; shift: Owen (2003), ACM TOMACS 13:363.
 */
final class PatternPoints {

    private static final int MOST_DIMENSIONS = 1_000;
    private static final int BITS = 52;
    /** Points are counted in an int. */
    private static final int INDEX_BITS = 30;
    private static final double UNIT = 1.0 / (1L << BITS);

    /** A point is its predecessor with one direction flipped; these are read on first use. */
    private static final class Directions {
        static final long[][] BY_BIT = read();

        private static long[][] read() {
            SobolSequenceGenerator sobol = new SobolSequenceGenerator(MOST_DIMENSIONS);
            long[][] directions = new long[INDEX_BITS][MOST_DIMENSIONS];
            for (int bit = 0; bit < INDEX_BITS; bit++) {
                // The Gray code of this index has the one bit.
                double[] point = sobol.skipTo((1 << bit + 1) - 1);
                for (int d = 0; d < MOST_DIMENSIONS; d++) {
                    directions[bit][d] = (long) (point[d] / UNIT);
                }
            }
            return directions;
        }
    }

    private final long[] shifted;
    private final long base;
    private int index = -1;

    PatternPoints(int coordinates, Seed seed) {
        shifted = new long[Math.min(coordinates, MOST_DIMENSIONS)];
        base = seed.derive("patterns").value();
        for (int c = 0; c < shifted.length; c++) {
            shifted[c] = mix(base ^ mix(c)) >>> Long.SIZE - BITS;
        }
    }

    void next() {
        index++;
        if (index > 0) {
            long[] direction = Directions.BY_BIT[Integer.numberOfTrailingZeros(index)];
            for (int c = 0; c < shifted.length; c++) {
                shifted[c] ^= direction[c];
            }
        }
    }

    /** In [0, 1). */
    double at(int coordinate) {
        return coordinate < shifted.length ? shifted[coordinate] * UNIT : hidden(coordinate);
    }

    /** In [0, 1). */
    double hidden(long label) {
        return (mix(mix(base + label) + index) >>> Long.SIZE - BITS) * UNIT;
    }

    /** The finaliser of SplitMix64: Steele, Lea and Flood (2014), OOPSLA. */
    private static long mix(long z) {
        long x = z + 0x9e3779b97f4a7c15L;
        x = (x ^ x >>> 30) * 0xbf58476d1ce4e5b9L;
        x = (x ^ x >>> 27) * 0x94d049bb133111ebL;
        return x ^ x >>> 31;
    }
}
