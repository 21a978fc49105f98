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
    private static final double UNIT = 1.0 / (1L << BITS);

    private final SobolSequenceGenerator sequence;
    private final long[] shift;
    private final long base;
    private double[] point;
    private long index = -1;

    PatternPoints(int coordinates, Seed seed) {
        int dimensions = Math.min(coordinates, MOST_DIMENSIONS);
        sequence = new SobolSequenceGenerator(dimensions);
        shift = new long[dimensions];
        base = seed.derive("patterns").value();
        for (int c = 0; c < dimensions; c++) {
            shift[c] = mix(base ^ mix(c)) >>> Long.SIZE - BITS;
        }
    }

    void next() {
        point = sequence.nextVector();
        index++;
    }

    /** In [0, 1). */
    double at(int coordinate) {
        return coordinate < shift.length
                ? ((long) (point[coordinate] / UNIT) ^ shift[coordinate]) * UNIT
                : hidden(coordinate);
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
