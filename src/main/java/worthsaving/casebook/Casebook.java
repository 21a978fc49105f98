package worthsaving.casebook;

import java.io.IOException;
import java.nio.file.Path;
import java.sql.SQLException;
import java.time.Clock;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import worthsaving.record.FinishedCar;

/**
 * The user's casebook: one SQLite file. Every edit is one transaction and on the drive when {@link #save} returns, so there
 * is no button for saving; undo and redo reach back over reopening. One window writes at a time. Safe to use from several
 * threads.
 */
public final class Casebook implements AutoCloseable {

    private final Path file;
    private final Database database;
    private final Optional<Writing> writing;
    private final Clock clock;
    private final EditLog log;
    private final Reading reading;

    /** What only the window that writes has. */
    record Writing(WindowLock lock, FileIdentity identity) {}

    private interface Query<T> {
        T run() throws SQLException;
    }

    Casebook(Path file, Database database, Optional<Writing> writing, Clock clock) throws SQLException {
        this.file = file;
        this.database = database;
        this.writing = writing;
        this.clock = clock;
        this.log = new EditLog(database);
        this.reading = new Reading(database);
    }

    /** Opens a casebook, or begins one where there is no file. The folder must be there. */
    public static Opening open(Path file, Access access) {
        return open(file, access, Clock.systemUTC());
    }

    /** As {@link #open(Path, Access)}, with the clock that dates edits and backups. */
    public static Opening open(Path file, Access access, Clock clock) {
        return new Opener(file, clock).open(access);
    }

    /** Backups of a casebook, newest first. */
    public static List<Path> backups(Path file) {
        return new Backups(file.toAbsolutePath()).all();
    }

    /**
     * Puts a backup in the place of a casebook that no window has open. What was there is set aside, not deleted.
     *
     * @return where it was set aside to; empty when there was nothing
     * @throws IOException when the backup is no sound casebook, the casebook is open, or a file cannot be written
     */
    public static Optional<Path> restore(Path backup, Path file) throws IOException {
        return new Opener(file, Clock.systemUTC()).restore(backup);
    }

    public Path file() {
        return file;
    }

    public boolean readOnly() {
        return writing.isEmpty();
    }

    /** All cases, in the order in which they were added. */
    public List<CaseFile> cases() {
        return query(reading::cases);
    }

    /** The case with an id. */
    public Optional<CaseFile> caseOf(String id) {
        return cases().stream().filter(c -> c.id().equals(id)).findFirst();
    }

    /** The finished cars, for the record; invented ones are none of the user's record. */
    public List<FinishedCar> finished() {
        return cases().stream().filter(c -> !c.invented()).map(CaseFile::finished).flatMap(Optional::stream).toList();
    }

    /** Settings by name. */
    public Map<String, String> settings() {
        return query(reading::settings);
    }

    /** Every edit ever made, oldest first. */
    public List<Edited> history() {
        return query(log::all);
    }

    /** The edit that {@link #undo} would take back. */
    public synchronized Optional<Edited> toUndo() {
        return log.toUndo();
    }

    /** The edit that {@link #redo} would do again. */
    public synchronized Optional<Edited> toRedo() {
        return log.toRedo();
    }

    /** Carries an edit out. When this returns {@link Saving.Done}, it is on the drive. */
    public Saving save(Edit edit) {
        return write(Edited.Kind.EDIT, Optional.empty(), edit.label(), () -> {
            Editing editing = new Editing(database, clock.instant());
            editing.carryOut(edit);
            return editing.changes();
        });
    }

    /** Takes back the last edit that was not taken back yet. */
    public synchronized Saving undo() {
        return log.toUndo()
                .map(edit -> write(Edited.Kind.UNDO, Optional.of(edit.number()), "undo: " + edit.label(), () -> {
                    List<Change> back = new ArrayList<>(log.changes(edit.number()).stream().map(Change::turned).toList());
                    Collections.reverse(back);
                    return applied(back);
                }))
                .orElse(new Saving.Failed(new Trouble("there is nothing to undo", "make an edit first")));
    }

    /** Does the edit again that was taken back last. */
    public synchronized Saving redo() {
        return log.toRedo()
                .map(edit -> write(Edited.Kind.REDO, Optional.of(edit.number()), "redo: " + edit.label(),
                        () -> applied(log.changes(edit.number()))))
                .orElse(new Saving.Failed(new Trouble("there is nothing to redo", "undo an edit first")));
    }

    /** Copies the casebook, as it stands, among its backups. */
    public synchronized Path backup() throws IOException {
        try {
            return new Backups(file).make(database, log.lastInFile(), today(clock));
        } catch (SQLException e) {
            throw new IOException(Trouble.of(e).text(), e);
        }
    }

    static LocalDate today(Clock clock) {
        return clock.instant().atZone(ZoneId.systemDefault()).toLocalDate();
    }

    private List<Change> applied(List<Change> changes) throws SQLException {
        for (Change change : changes) {
            change.apply(database);
        }
        return changes;
    }

    private synchronized Saving write(Edited.Kind kind, Optional<Long> of, String label, Query<List<Change>> work) {
        if (writing.isEmpty()) {
            return new Saving.Failed(new Trouble("this casebook is open for reading only", "open it for writing"));
        }
        if (!writing.get().identity().stillThere()) {
            return new Saving.Failed(FileIdentity.GONE);
        }
        Edited[] edited = new Edited[1];
        try {
            database.transaction(() -> {
                if (log.lastInFile() != log.last()) {
                    throw new Editing.Impossible("another program has changed this casebook meanwhile",
                            "open it again, then repeat this edit");
                }
                edited[0] = log.append(clock.instant(), kind, of, label, work.run());
            });
            log.remember(edited[0]);
            return new Saving.Done(edited[0]);
        } catch (Editing.Impossible e) {
            return new Saving.Failed(e.trouble());
        } catch (SQLException e) {
            return new Saving.Failed(Trouble.of(e));
        }
    }

    private synchronized <T> T query(Query<T> query) {
        try {
            return query.run();
        } catch (SQLException e) {
            throw new CasebookException(Trouble.of(e), e);
        }
    }

    Database database() {
        return database;
    }

    @Override
    public synchronized void close() {
        try {
            database.close();
        } catch (SQLException e) {
            throw new CasebookException(Trouble.of(e), e);
        } finally {
            writing.ifPresent(w -> w.lock().close());
        }
    }
}
