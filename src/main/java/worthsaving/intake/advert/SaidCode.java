package worthsaving.intake.advert;

import java.util.Objects;
import java.util.Optional;
import worthsaving.intake.TroubleCode;
import worthsaving.vehicle.Observation.Sight;

/**
 * A trouble code that the seller names.
 *
 * @param finding what it stands for in the catalogue; empty for the maker's own and for those nothing is asked of
 */
public record SaidCode(TroubleCode code, Optional<String> finding, Sight sight) {

    public SaidCode {
        Objects.requireNonNull(code, "code");
        Objects.requireNonNull(finding, "finding");
        Objects.requireNonNull(sight, "sight");
    }
}
