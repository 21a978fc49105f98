package worthsaving.casebook;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.BasicFileAttributes;
import java.util.Objects;

/**
 * Which file it was that was opened. Writing into a file that has lost its name succeeds and is lost; so the name is looked
 * up before every edit.
 */
final class FileIdentity {

    static final Trouble GONE = new Trouble("the casebook is no longer where it was opened; this edit was not kept",
            "connect the drive or put the file back, then open it again; all earlier edits are in the file");

    private final Path file;
    private final Object key;

    private FileIdentity(Path file, Object key) {
        this.file = file;
        this.key = key;
    }

    static FileIdentity of(Path file) throws IOException {
        return new FileIdentity(file, key(file));
    }

    boolean stillThere() {
        try {
            return Objects.equals(key, key(file));
        } catch (IOException e) {
            return false;
        }
    }

    /** Device and inode; null where the system has none, and then only presence is checked. */
    private static Object key(Path file) throws IOException {
        return Files.readAttributes(file, BasicFileAttributes.class).fileKey();
    }
}
