package worthsaving.intake.advert;

import java.util.Objects;
import java.util.Optional;
import worthsaving.vehicle.Observation.Sight;

/**
 * Something the seller describes.
 *
 * @param word the vocabulary's word, such as {@code "coolant_loss"}
 * @param finding the catalogue finding it stands for, if the catalogue asks about it
 * @param sight present, absent ("no knocks") or unsure
 */
public record Symptom(String word, Optional<String> finding, Sight sight) {

    public Symptom {
        Objects.requireNonNull(word, "word");
        Objects.requireNonNull(finding, "finding");
        Objects.requireNonNull(sight, "sight");
    }
}
