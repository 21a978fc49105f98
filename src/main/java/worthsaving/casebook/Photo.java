package worthsaving.casebook;

import java.time.Instant;
import java.util.Objects;
import java.util.Optional;

/**
 * A photo by reference: the casebook keeps where it lies and what it was, not the picture.
 *
 * @param path beside the casebook where it lies there, so that both can be moved together; otherwise the whole path
 * @param sha256 checksum in hexadecimal, by which a replaced picture is noticed
 * @param entry number of the journal's entry that it belongs to, if to one
 */
public record Photo(Instant at, String stage, String path, String sha256, String caption, Optional<Long> entry) {

    public Photo(Instant at, String stage, String path, String sha256, String caption) {
        this(at, stage, path, sha256, caption, Optional.empty());
    }

    public Photo {
        Objects.requireNonNull(at, "at");
        Objects.requireNonNull(stage, "stage");
        Objects.requireNonNull(caption, "caption");
        Objects.requireNonNull(entry, "entry");
        if (path.isBlank() || !sha256.matches("[0-9a-f]{64}")) {
            throw new IllegalArgumentException("a photo needs a path and a SHA-256 of 64 hexadecimal digits");
        }
    }

    /** Its caption, or else the name of its file. */
    public String title() {
        return caption.isBlank() ? path.substring(path.lastIndexOf('/') + 1) : caption;
    }

    /** The same, of an entry. */
    public Photo of(long number) {
        return new Photo(at, stage, path, sha256, caption, Optional.of(number));
    }
}
