package worthsaving.vehicle;

import java.util.Map;

/**
 * How long the car was driven in a state that harms it, per hazard. The catalogue's secondary damage
 * depends on it: a minute with the oil light on is not ten miles.
 */
public record Exposure(Map<Hazard, Level> levels) {

    /** States in which running on does damage. */
    public enum Hazard { LOW_OIL_PRESSURE, OVERHEATING, WORN_TIMING_DRIVE, MISFIRE, SLIPPING_GEARBOX }

    /** How long. {@code UNKNOWN} uses the catalogue's usual figure. */
    public enum Level { STOPPED_AT_ONCE, UNKNOWN, DRIVEN_ON }

    public static final Exposure UNKNOWN = new Exposure(Map.of());

    public Exposure {
        levels = Map.copyOf(levels);
    }

    public Level level(Hazard hazard) {
        return levels.getOrDefault(hazard, Level.UNKNOWN);
    }
}
