package worthsaving.casebook;

import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.sql.SQLException;
import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/**
 * Copies of a casebook in a folder beside it, one for each day on which it was opened after a change. They are ordered by
 * the number of the last edit in them and not by the clock, which may have been wrong.
 */
final class Backups {

    static final int KEPT = 10;

    private static final Pattern NAME = Pattern.compile("edit-(\\d{9})-(\\d{4}-\\d{2}-\\d{2})\\.db");

    private final Path casebook;
    private final Path folder;

    Backups(Path casebook) {
        this.casebook = casebook;
        this.folder = casebook.resolveSibling(casebook.getFileName() + "-backups");
    }

    /** Newest first; empty when there are none or they cannot be listed. */
    List<Path> all() {
        if (!Files.isDirectory(folder)) {
            return List.of();
        }
        try (Stream<Path> files = Files.list(folder)) {
            return files.filter(f -> NAME.matcher(f.getFileName().toString()).matches())
                    .sorted(Comparator.comparing((Path f) -> f.getFileName().toString()).reversed()).toList();
        } catch (IOException e) {
            return List.of();
        }
    }

    Optional<Path> newest() {
        return all().stream().findFirst();
    }

    /** Makes one unless there is one of this state, or one of this day; then lets go of the oldest. */
    Optional<Path> daily(Database database, long lastEdit, LocalDate today) throws SQLException, IOException {
        Optional<Matcher> newest = newest().map(f -> NAME.matcher(f.getFileName().toString())).filter(Matcher::matches);
        boolean due = lastEdit > 0 && newest
                .map(m -> Long.parseLong(m.group(1)) < lastEdit && !m.group(2).equals(today.toString())).orElse(true);
        if (!due) {
            return Optional.empty();
        }
        Path made = make(database, lastEdit, today);
        List<Path> all = all();
        for (Path old : all.subList(Math.min(KEPT, all.size()), all.size())) {
            Files.delete(old);
        }
        return Optional.of(made);
    }

    /** Makes one in any case. It takes its name only once it is whole, on the drive and found sound. */
    Path make(Database database, long lastEdit, LocalDate today) throws SQLException, IOException {
        Files.createDirectories(folder);
        return copy(database, folder.resolve(String.format(Locale.ROOT, "edit-%09d-%s.db", lastEdit, today)));
    }

    /** A copy that rotation does not touch, made before the tables change. */
    Path beforeUpdate(Database database, int version) throws SQLException, IOException {
        Files.createDirectories(folder);
        return copy(database, folder.resolve("before-update-of-version-" + version + ".db"));
    }

    private static Path copy(Database database, Path to) throws SQLException, IOException {
        Path partial = to.resolveSibling(to.getFileName() + ".part");
        Files.deleteIfExists(partial);
        database.run("VACUUM INTO ?", List.of(partial.toString()));
        try (Database check = Database.immutable(partial)) {
            String damage = Schema.damage(check);
            if (!damage.isEmpty()) {
                throw new IOException("the backup " + partial + " is not sound: " + damage);
            }
        }
        moveDurably(partial, to);
        return to;
    }

    /**
     * Puts a backup in the casebook's place. What was there is set aside, never deleted.
     *
     * @return where it was set aside to; empty when there was nothing
     */
    Optional<Path> restore(Path backup) throws IOException {
        Path partial = casebook.resolveSibling(casebook.getFileName() + ".part");
        Files.copy(backup, partial, StandardCopyOption.REPLACE_EXISTING);
        Optional<Path> aside = Optional.empty();
        if (Files.exists(casebook)) {
            Path name = free();
            for (String part : List.of("-wal", "-shm")) {
                Path from = casebook.resolveSibling(casebook.getFileName() + part);
                if (Files.exists(from)) {
                    Files.move(from, name.resolveSibling(name.getFileName() + part));
                }
            }
            Files.move(casebook, name);
            aside = Optional.of(name);
        }
        moveDurably(partial, casebook);
        return aside;
    }

    private Path free() {
        for (int i = 1; ; i++) {
            Path name = casebook.resolveSibling(casebook.getFileName() + ".set-aside-" + i);
            if (!Files.exists(name)) {
                return name;
            }
        }
    }

    private static void moveDurably(Path from, Path to) throws IOException {
        try (FileChannel written = FileChannel.open(from, StandardOpenOption.WRITE)) {
            written.force(true);
        }
        Files.move(from, to, StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
    }
}
