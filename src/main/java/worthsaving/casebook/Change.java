package worthsaving.casebook;

import java.sql.SQLException;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;

/** One row before and after; a row that was not there, or is not any more, is empty. */
record Change(Table table, List<Object> key, Optional<Row> before, Optional<Row> after) {

    @SuppressWarnings("ArgumentSelectionDefectChecker")
    Change turned() {
        return new Change(table, key, after, before);
    }

    static Optional<Row> find(Database database, Table table, List<Object> key) throws SQLException {
        return database.rows("SELECT * FROM " + table.id() + table.whereKey(), key.toArray()).stream().findFirst();
    }

    /**
     * Carries the change out.
     *
     * @throws SQLException also when the row is not as it was before: some other program has changed it
     */
    void apply(Database database) throws SQLException {
        Optional<Row> now = find(database, table, key);
        if (now.isPresent() != before.isPresent() || (now.isPresent() && !now.get().agreesWith(before.get()))) {
            throw new SQLException("a row of " + table.id() + " was changed by another program: " + key);
        }
        if (after.isEmpty()) {
            database.run("DELETE FROM " + table.id() + table.whereKey(), key);
            return;
        }
        List<String> columns = new ArrayList<>(after.get().values().keySet());
        List<Object> values = new ArrayList<>(after.get().values().values());
        if (now.isPresent()) {
            values.addAll(key);
            database.run("UPDATE " + table.id() + " SET " + String.join(" = ?, ", columns) + " = ?" + table.whereKey(),
                    values);
        } else {
            database.run("INSERT INTO " + table.id() + " (" + String.join(", ", columns) + ") VALUES ("
                    + String.join(", ", Collections.nCopies(columns.size(), "?")) + ")", values);
        }
    }
}
