package worthsaving.casebook;

import java.sql.SQLException;
import java.time.Instant;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Deque;
import java.util.List;
import java.util.Optional;

/**
 * The log of edits, which is only ever added to, and the two stacks that undo and redo read off it. Edits are ordered by
 * number, never by clock.
 */
final class EditLog {

    private final Database database;
    private final Deque<Edited> done = new ArrayDeque<>();
    private final Deque<Edited> undone = new ArrayDeque<>();
    private long last;

    EditLog(Database database) throws SQLException {
        this.database = database;
        reload();
    }

    /** Reads the stacks anew, as after a failure. */
    void reload() throws SQLException {
        done.clear();
        undone.clear();
        last = 0;
        for (Row row : database.rows("SELECT * FROM edit ORDER BY id")) {
            remember(edited(row));
        }
    }

    List<Edited> all() throws SQLException {
        return database.rows("SELECT * FROM edit ORDER BY id").stream().map(EditLog::edited).toList();
    }

    long last() {
        return last;
    }

    /** Number of the last edit in the file, which another program may have made. */
    long lastInFile() throws SQLException {
        return database.number("SELECT coalesce(max(id), 0) FROM edit");
    }

    Optional<Edited> toUndo() {
        return Optional.ofNullable(done.peek());
    }

    Optional<Edited> toRedo() {
        return Optional.ofNullable(undone.peek());
    }

    /** Writes the edit into the log; to be remembered once it is committed. */
    Edited append(Instant at, Edited.Kind kind, Optional<Long> of, String label, List<Change> changes)
            throws SQLException {
        database.run("INSERT INTO edit (at, kind, of, label) VALUES (?, ?, ?, ?)",
                Arrays.asList(at.toString(), kind.name(), of.orElse(null), label));
        long id = database.number("SELECT last_insert_rowid()");
        for (int seq = 0; seq < changes.size(); seq++) {
            Change c = changes.get(seq);
            database.run("INSERT INTO change (edit, seq, tab, key, before, after) VALUES (?, ?, ?, ?, ?, ?)",
                    Arrays.asList(id, (long) seq, c.table().id(), Row.json(c.key()),
                            json(c.before()), json(c.after())));
        }
        return new Edited(id, at, kind, of, label);
    }

    /** The changes of an edit in their order. */
    List<Change> changes(long edit) throws SQLException {
        List<Change> changes = new ArrayList<>();
        for (Row row : database.rows("SELECT * FROM change WHERE edit = ? ORDER BY seq", edit)) {
            Table table = Table.ofId(row.text("tab"))
                    .orElseThrow(() -> new SQLException("the log names an unknown table: " + row.text("tab")));
            changes.add(new Change(table, Row.listOfJson(row.text("key")),
                    row.maybeText("before").map(Row::ofJson), row.maybeText("after").map(Row::ofJson)));
        }
        return changes;
    }

    private static String json(Optional<Row> row) {
        return row.map(r -> Row.json(r.values())).orElse(null);
    }

    void remember(Edited edited) {
        last = edited.number();
        switch (edited.kind()) {
            case EDIT -> {
                done.push(edited);
                undone.clear();
            }
            case UNDO -> undone.push(done.pop());
            case REDO -> done.push(undone.pop());
        }
    }

    private static Edited edited(Row row) {
        return new Edited(row.whole("id"), Instant.parse(row.text("at")), Edited.Kind.valueOf(row.text("kind")),
                Optional.ofNullable(row.values().get("of")).map(v -> (Long) v), row.text("label"));
    }
}
