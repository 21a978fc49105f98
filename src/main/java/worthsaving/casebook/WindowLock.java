package worthsaving.casebook;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.channels.FileLock;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;

/**
 * Lets one window at a time write to a casebook. The operating system holds the lock, on a small file beside the casebook,
 * and lets go of it when the process ends in whatever way; so a lock is never left over. The file itself is left where it
 * lies, saying who was last: deleting it would let two windows hold two files of one name.
 */
final class WindowLock implements AutoCloseable {

    /** Beyond the text, so that others may read who holds the lock where locks are mandatory. */
    private static final long LOCKED_BYTE = 1L << 40;

    /** By lock file. The system's lock is one per process, and closing any second channel to the file would drop it. */
    private static final Map<Path, String> HELD_HERE = new ConcurrentHashMap<>();

    private final Path file;
    private final FileChannel channel;

    private WindowLock(Path file, FileChannel channel) {
        this.file = file;
        this.channel = channel;
    }

    /** What became of trying. */
    sealed interface Attempt {
        record Got(WindowLock lock) implements Attempt {}

        /** @param by whoever holds it, in words */
        record Held(String by) implements Attempt {}
    }

    /**
     * @param casebook its real path
     * @throws IOException when no lock file can be had, as in a folder that may not be written
     */
    static Attempt attempt(Path casebook, Instant now) throws IOException {
        Path file = casebook.resolveSibling(casebook.getFileName() + "-lock");
        String me = "process " + ProcessHandle.current().pid() + " since " + now.truncatedTo(ChronoUnit.SECONDS);
        String here = HELD_HERE.putIfAbsent(file, me);
        if (here != null) {
            return new Attempt.Held("another window of this program (" + here + ")");
        }
        FileChannel channel = null;
        try {
            channel = FileChannel.open(file, StandardOpenOption.CREATE, StandardOpenOption.READ, StandardOpenOption.WRITE);
            FileLock lock = channel.tryLock(LOCKED_BYTE, 1, false);
            if (lock == null) {
                channel.close();
                HELD_HERE.remove(file);
                return new Attempt.Held("another window (" + Files.readString(file).strip() + ")");
            }
            channel.truncate(0);
            channel.write(ByteBuffer.wrap((me + "\n").getBytes(StandardCharsets.UTF_8)), 0);
            return new Attempt.Got(new WindowLock(file, channel));
        } catch (IOException | RuntimeException e) {
            HELD_HERE.remove(file);
            if (channel != null) {
                channel.close();
            }
            throw e;
        }
    }

    @Override
    public void close() {
        try {
            channel.close();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        } finally {
            HELD_HERE.remove(file);
        }
    }
}
