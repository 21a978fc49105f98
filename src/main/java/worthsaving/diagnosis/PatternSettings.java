package worthsaving.diagnosis;

import java.util.Objects;
import worthsaving.quantity.Seed;

/**
 * How failure patterns are found.
 *
 * @param cap most patterns to enumerate
 * @param mass posterior probability that an enumeration must hold
 * @param points draws when more than {@code cap} patterns would be needed; a power of two keeps the
 *     balance of the quasi-random sequence
 * @param seed of the sequence's random shift
 */
public record PatternSettings(int cap, double mass, int points, Seed seed) {

    public static final PatternSettings USUAL = new PatternSettings(2_000, 0.999, 4_096, Seed.DEFAULT);

    public PatternSettings {
        Objects.requireNonNull(seed, "seed");
        if (cap < 0 || points < 1 || !(mass > 0 && mass <= 1)) {
            throw new IllegalArgumentException("patterns need a cap of zero or more, one point or more and a mass in"
                    + " (0, 1], not " + cap + ", " + points + ", " + mass);
        }
    }

    public PatternSettings withPoints(int count) {
        return new PatternSettings(cap, mass, count, seed);
    }

    public PatternSettings withSeed(Seed other) {
        return new PatternSettings(cap, mass, points, other);
    }
}
