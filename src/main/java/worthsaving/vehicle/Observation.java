package worthsaving.vehicle;

import java.util.Objects;

/**
 * What is known of one finding, or of one failure item looked at directly.
 *
 * @param subject id of a finding or of a failure item in the catalogue
 * @param witness who says so; a seller's word is soft evidence
 */
public record Observation(String subject, Sight sight, Witness witness) {

    /** Result of looking. */
    public enum Sight { PRESENT, ABSENT, UNSURE, NOT_LOOKED_AT }

    /** Whose word it is. */
    public enum Witness { OWN_EYES, SELLER }

    public Observation {
        Objects.requireNonNull(subject, "subject");
        Objects.requireNonNull(sight, "sight");
        Objects.requireNonNull(witness, "witness");
    }

    public static Observation present(String subject) {
        return new Observation(subject, Sight.PRESENT, Witness.OWN_EYES);
    }

    public static Observation absent(String subject) {
        return new Observation(subject, Sight.ABSENT, Witness.OWN_EYES);
    }
}
