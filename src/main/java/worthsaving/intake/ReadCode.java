package worthsaving.intake;

import java.util.Objects;
import worthsaving.vehicle.Observation.Sight;

/**
 * A trouble code with what the scan tool says of it.
 *
 * @param line of the report on which it stands, the first being 1
 */
public record ReadCode(TroubleCode code, Status status, int line) {

    /**
     * How the car holds the code: confirmed and lighting a lamp, seen once and not yet confirmed, kept until the car
     * itself proves the repair, or left from earlier. A test that passed is no fault.
     */
    public enum Status {
        STORED, PENDING, PERMANENT, HISTORY, PASSED;

        /** What it says of the finding that the code stands for: only a confirmed fault is sure. */
        public Sight sight() {
            return switch (this) {
                case STORED, PERMANENT -> Sight.PRESENT;
                case PENDING, HISTORY -> Sight.UNSURE;
                case PASSED -> Sight.NOT_LOOKED_AT;
            };
        }
    }

    public ReadCode {
        Objects.requireNonNull(code, "code");
        Objects.requireNonNull(status, "status");
    }
}
