package worthsaving.casebook;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.SQLException;
import java.time.Clock;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/** Opens one casebook file, or says why not. */
final class Opener {

    /** First 16 bytes of every SQLite file. Source: SQLite file format, 1.3.1. */
    private static final byte[] SQLITE = "SQLite format 3\0".getBytes(StandardCharsets.US_ASCII);

    private final Path file;
    private final Clock clock;
    private final Backups backups;

    Opener(Path given, Clock clock) {
        this.file = real(given.toAbsolutePath().normalize());
        this.clock = clock;
        this.backups = new Backups(file);
    }

    /** One name for one file, so that two names of it cannot be opened beside each other. */
    private static Path real(Path path) {
        try {
            return Files.exists(path) ? path.toRealPath() : path.getParent().toRealPath().resolve(path.getFileName());
        } catch (IOException e) {
            return path;
        }
    }

    Opening open(Access access) {
        try {
            Optional<Trouble> unusable = unusable(access);
            if (unusable.isPresent()) {
                return new Opening.Refused(unusable.get());
            }
            if (access == Access.READ) {
                return reading(Optional.empty());
            }
            if (!Files.isWritable(file.getParent()) || (Files.exists(file) && !Files.isWritable(file))) {
                return readingOnly(new Trouble("the casebook or its folder may not be written: " + file,
                        "see their permissions, or copy the casebook elsewhere"));
            }
            return locking();
        } catch (SQLException e) {
            return refused(e);
        } catch (IOException e) {
            return new Opening.Refused(new Trouble("the casebook cannot be opened: " + e.getMessage(),
                    "see whether its drive is connected and its folder may be used"));
        }
    }

    private Optional<Trouble> unusable(Access access) throws IOException {
        Path folder = file.getParent();
        if (!Files.isDirectory(folder)) {
            return Optional.of(new Trouble("there is no folder " + folder, "connect its drive, or make the folder"));
        }
        if (Files.isDirectory(file)) {
            return Optional.of(new Trouble(file + " is a folder", "give the name of a file"));
        }
        if (!Files.exists(file)) {
            return access == Access.WRITE ? Optional.empty()
                    : Optional.of(new Trouble("there is no casebook " + file, "see whether its drive is connected"));
        }
        if (Files.size(file) == 0) {
            return access == Access.WRITE
                    ? backups.newest().map(b -> new Trouble(file + " is empty, but there are backups of it", mend()))
                    : Optional.of(new Trouble(file + " is empty", mend()));
        }
        try (InputStream in = Files.newInputStream(file)) {
            return Arrays.equals(SQLITE, in.readNBytes(SQLITE.length)) ? Optional.empty()
                    : Optional.of(new Trouble(file + " is damaged or is no casebook", mend()));
        }
    }

    private Opening locking() throws SQLException, IOException {
        WindowLock.Attempt attempt = WindowLock.attempt(file, clock.instant());
        if (attempt instanceof WindowLock.Attempt.Held held) {
            return readingOnly(new Trouble("the casebook is open in " + held.by() + ", so it is shown for reading only",
                    "go on in that window, or close it and open the casebook here again"));
        }
        WindowLock lock = ((WindowLock.Attempt.Got) attempt).lock();
        Opening opening = null;
        try {
            opening = writing(lock);
            return opening;
        } finally {
            if (!(opening instanceof Opening.Opened)) {
                lock.close();
            }
        }
    }

    private Opening writing(WindowLock lock) throws SQLException, IOException {
        Database database = Database.forWriting(file);
        boolean handedOn = false;
        try {
            Optional<Opening> faulty = faulty(database);
            if (faulty.isPresent()) {
                return faulty.get();
            }
            List<String> notes = new ArrayList<>();
            int version = Schema.version(database);
            if (version < Schema.CURRENT) {
                if (version > 0) {
                    notes.add("updated from version " + version + "; a copy from before is in "
                            + backups.beforeUpdate(database, version));
                }
                Schema.migrate(database);
            }
            Casebook casebook = new Casebook(file, database,
                    Optional.of(new Casebook.Writing(lock, FileIdentity.of(file))), clock);
            backUp(database, notes);
            handedOn = true;
            return new Opening.Opened(casebook, notes);
        } finally {
            if (!handedOn) {
                database.close();
            }
        }
    }

    private void backUp(Database database, List<String> notes) {
        try {
            backups.daily(database, new EditLog(database).last(), Casebook.today(clock));
        } catch (SQLException e) {
            notes.add("no backup could be made today: " + Trouble.of(e).text());
        } catch (IOException e) {
            notes.add("no backup could be made today: " + e.getMessage());
        }
    }

    private Opening readingOnly(Trouble why) throws SQLException, IOException {
        if (!Files.exists(file)) {
            return new Opening.Refused(why);
        }
        return reading(Optional.of(why));
    }

    /** @param why empty when it was asked for */
    private Opening reading(Optional<Trouble> why) throws SQLException, IOException {
        if (needsItsLog()) {
            return new Opening.Refused(new Trouble(file + " may not be written, and edits still lie in the file -wal beside it",
                    "copy both files together into a folder that may be written, and open them there"));
        }
        Database database = forReading();
        boolean handedOn = false;
        try {
            Optional<Opening> faulty = faulty(database);
            if (faulty.isPresent()) {
                return faulty.get();
            }
            if (Schema.version(database) < Schema.CURRENT) {
                Database copy = Database.copyInMemory(database);
                database.close();
                database = copy;
                Schema.migrate(database);
            }
            Casebook casebook = new Casebook(file, database, Optional.empty(), clock);
            handedOn = true;
            return why.isPresent() ? new Opening.ReadOnly(casebook, why.get()) : new Opening.Opened(casebook, List.of());
        } finally {
            if (!handedOn) {
                database.close();
            }
        }
    }

    /** Where nothing may be written, readers cannot lock either; then the file must be whole without its log. */
    private Database forReading() throws SQLException {
        return Files.isWritable(file.getParent()) ? Database.forReading(file) : Database.immutable(file);
    }

    private boolean needsItsLog() throws IOException {
        Path log = file.resolveSibling(file.getFileName() + "-wal");
        return !Files.isWritable(file.getParent()) && Files.exists(log) && Files.size(log) > 0;
    }

    private Optional<Opening> faulty(Database database) throws SQLException {
        Schema.Kind kind = Schema.kind(database);
        int version = Schema.version(database);
        if (kind == Schema.Kind.FOREIGN) {
            return Optional.of(new Opening.Refused(new Trouble(
                    file + " belongs to another program", "give the name of a casebook")));
        }
        if (version > Schema.CURRENT) {
            return Optional.of(new Opening.Refused(new Trouble(
                    file + " was written by a newer version of this program (tables of version " + version
                            + ", this program knows up to " + Schema.CURRENT + ")",
                    "use the newer version; the file was not touched")));
        }
        String damage = kind == Schema.Kind.NEW ? "" : Schema.damage(database);
        return damage.isEmpty() ? Optional.empty() : Optional.of(damaged(damage));
    }

    /** What can still be read of a damaged file is shown; otherwise it is refused. */
    private Opening damaged(String damage) {
        Trouble why = new Trouble(file + " is damaged (" + damage + "), so it is shown for reading only", mend());
        Database database = null;
        try {
            database = Database.forReading(file);
            Casebook casebook = new Casebook(file, database, Optional.empty(), clock);
            casebook.cases();
            return new Opening.ReadOnly(casebook, why);
        } catch (SQLException | RuntimeException e) {
            closeQuietly(database);
            return new Opening.Refused(new Trouble(file + " is damaged (" + damage + ")", mend()));
        }
    }

    private static void closeQuietly(Database database) {
        try {
            if (database != null) {
                database.close();
            }
        } catch (SQLException e) {
            // it was only read, and why is told already
        }
    }

    private Opening refused(SQLException e) {
        Trouble trouble = Trouble.of(e);
        return new Opening.Refused(new Trouble(file + ": " + trouble.reason(),
                trouble.mend().equals("restore a backup") ? mend() : trouble.mend()));
    }

    private String mend() {
        return backups.newest().map(b -> "restore the backup " + b)
                .orElse("there is no backup beside it; look for a copy of your own");
    }

    Optional<Path> restore(Path backup) throws IOException {
        Opening source = new Opener(backup, clock).open(Access.READ);
        if (!(source instanceof Opening.Opened opened)) {
            Trouble why = source instanceof Opening.Refused no ? no.why() : ((Opening.ReadOnly) source).why();
            throw new IOException("the backup cannot be used: " + why.text());
        }
        opened.casebook().close();
        WindowLock.Attempt attempt = WindowLock.attempt(file, clock.instant());
        if (attempt instanceof WindowLock.Attempt.Held held) {
            throw new IOException("the casebook is open in " + held.by() + "; close it first");
        }
        WindowLock lock = ((WindowLock.Attempt.Got) attempt).lock();
        try {
            return backups.restore(backup);
        } finally {
            lock.close();
        }
    }
}
