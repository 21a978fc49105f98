package worthsaving.casebook;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.time.Instant;
import java.util.HexFormat;

/** A picture on the drive, as a photo refers to it. */
public final class PhotoFile {

    private PhotoFile() {}

    /**
     * Refers to a picture: where it lies, and its checksum.
     *
     * @param casebook the casebook's file; a picture beside it or below is named from there
     * @throws IOException when the picture cannot be read
     */
    public static Photo of(Path picture, Path casebook, Instant at, String stage, String caption) throws IOException {
        Path folder = casebook.toAbsolutePath().normalize().getParent();
        Path whole = picture.toAbsolutePath().normalize();
        Path shown = whole.startsWith(folder) ? folder.relativize(whole) : whole;
        return new Photo(at, stage, shown.toString().replace('\\', '/'), sha256(whole), caption);
    }

    /** Where the picture of a photo lies, if it is still there. */
    public static Path place(Photo photo, Path casebook) {
        return casebook.toAbsolutePath().normalize().getParent().resolve(photo.path());
    }

    private static String sha256(Path file) throws IOException {
        try (InputStream in = Files.newInputStream(file)) {
            MessageDigest digest = MessageDigest.getInstance("SHA-256");
            byte[] buffer = new byte[1 << 16];
            for (int n = in.read(buffer); n >= 0; n = in.read(buffer)) {
                digest.update(buffer, 0, n);
            }
            return HexFormat.of().formatHex(digest.digest());
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every Java has SHA-256", e);
        }
    }
}
