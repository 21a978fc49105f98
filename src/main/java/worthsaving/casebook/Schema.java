package worthsaving.casebook;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.sql.SQLException;

/**
 * Versions of the casebook's tables. Each is a script that takes the one before to it; {@code PRAGMA user_version} says
 * which a file has, {@code PRAGMA application_id} that it is a casebook at all.
 */
final class Schema {

    /** "WSCB" in ASCII. */
    static final int APPLICATION_ID = 0x57534342;

    static final int CURRENT = 4;

    private Schema() {}

    /** What a file holds. */
    enum Kind { NEW, OURS, FOREIGN }

    static Kind kind(Database database) throws SQLException {
        long id = database.number("PRAGMA application_id");
        if (id == APPLICATION_ID) {
            return Kind.OURS;
        }
        boolean bare = id == 0 && version(database) == 0 && database.number("SELECT count(*) FROM sqlite_schema") == 0;
        return bare ? Kind.NEW : Kind.FOREIGN;
    }

    static int version(Database database) throws SQLException {
        return (int) database.number("PRAGMA user_version");
    }

    /** Brings an older or new file up to date, in one transaction. */
    static void migrate(Database database) throws SQLException {
        migrate(database, CURRENT);
    }

    static void migrate(Database database, int to) throws SQLException {
        database.transaction(() -> {
            for (int version = version(database) + 1; version <= to; version++) {
                database.script(script(version));
            }
            database.script("PRAGMA application_id = " + APPLICATION_ID);
            database.script("PRAGMA user_version = " + to);
        });
    }

    static String script(int version) {
        try (InputStream in = Schema.class.getResourceAsStream(version + ".sql")) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** What is wrong with the file's structure, or empty when nothing is. */
    static String damage(Database database) {
        try {
            String found = (String) database.rows("PRAGMA quick_check(1)").get(0).values().values().iterator().next();
            return found.equals("ok") ? "" : found;
        } catch (SQLException e) {
            return e.getMessage();
        }
    }
}
