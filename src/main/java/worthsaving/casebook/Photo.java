package worthsaving.casebook;

import java.time.Instant;
import java.util.Objects;

/**
 * A photo by reference: the casebook keeps where it lies and what it was, not the picture.
 *
 * @param path beside the casebook where it lies there, so that both can be moved together; otherwise the whole path
 * @param sha256 checksum in hexadecimal, by which a replaced picture is noticed
 */
public record Photo(Instant at, String stage, String path, String sha256, String caption) {

    public Photo {
        Objects.requireNonNull(at, "at");
        Objects.requireNonNull(stage, "stage");
        Objects.requireNonNull(caption, "caption");
        if (path.isBlank() || !sha256.matches("[0-9a-f]{64}")) {
            throw new IllegalArgumentException("a photo needs a path and a SHA-256 of 64 hexadecimal digits");
        }
    }
}
