package worthsaving.casebook;

import java.nio.file.Path;
import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.ResultSetMetaData;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.ArrayList;
import java.util.List;
import org.sqlite.SQLiteConfig;
import org.sqlite.SQLiteConnection;
import org.sqlite.SQLiteOpenMode;

/** One connection to an SQLite file, as safe as SQLite makes it, with the few calls that the casebook needs. */
final class Database implements AutoCloseable {

    private static final int BUSY_MILLISECONDS = 2_000;
    private static final int FILE_FORMAT_WRITE = 18;
    private static final int FILE_FORMAT_READ = 19;

    private final Connection connection;

    /** What is done inside one transaction. */
    interface Work {
        void run() throws SQLException;
    }

    private Database(Connection connection) {
        this.connection = connection;
    }

    /**
     * For writing. Every commit is on the drive before it returns (synchronous FULL over a write-ahead log), and is
     * carried over into the file at once, so that a copy of the file alone is complete whenever nothing is being written.
     */
    static Database forWriting(Path file) throws SQLException {
        SQLiteConfig config = guarded();
        Database database = connect(file.toString(), config);
        try {
            database.script("PRAGMA journal_mode = WAL;\nPRAGMA synchronous = FULL;\n"
                    + "PRAGMA wal_autocheckpoint = 1;\nPRAGMA foreign_keys = ON");
        } catch (SQLException e) {
            database.close();
            throw e;
        }
        return database;
    }

    /** For reading beside a window that writes. */
    static Database forReading(Path file) throws SQLException {
        SQLiteConfig config = guarded();
        config.setReadOnly(true);
        return connect(file.toString(), config);
    }

    /** For reading where nothing may be written, not even the locks of readers. */
    static Database immutable(Path file) throws SQLException {
        SQLiteConfig config = guarded();
        config.setReadOnly(true);
        config.setOpenMode(SQLiteOpenMode.OPEN_URI);
        return connect(file.toUri() + "?immutable=1", config);
    }

    /** A copy in memory, which may be changed without touching the file. */
    static Database copyInMemory(Database from) throws SQLException {
        byte[] bytes = from.connection.unwrap(SQLiteConnection.class).serialize("main");
        // Memory knows no write-ahead log; the file format number 1 says that there is none. Source: SQLite file format, 1.3.3.
        bytes[FILE_FORMAT_WRITE] = 1;
        bytes[FILE_FORMAT_READ] = 1;
        Database copy = connect(":memory:", guarded());
        copy.connection.unwrap(SQLiteConnection.class).deserialize("main", bytes);
        return copy;
    }

    private static SQLiteConfig guarded() {
        SQLiteConfig config = new SQLiteConfig();
        config.setBusyTimeout(BUSY_MILLISECONDS);
        return config;
    }

    private static Database connect(String name, SQLiteConfig config) throws SQLException {
        Database database = new Database(config.createConnection("jdbc:sqlite:" + name));
        try {
            // What a stranger's file holds may be read, but nothing in it may act.
            database.script("PRAGMA trusted_schema = OFF");
            return database;
        } catch (SQLException e) {
            database.close();
            throw e;
        }
    }

    /** Runs statements, each ended by a semicolon at the end of a line. */
    void script(String sql) throws SQLException {
        try (Statement statement = connection.createStatement()) {
            for (String one : sql.split(";\\s*\\R")) {
                if (!one.isBlank()) {
                    statement.execute(one);
                }
            }
        }
    }

    int run(String sql, List<?> arguments) throws SQLException {
        try (PreparedStatement statement = prepare(sql, arguments)) {
            return statement.executeUpdate();
        }
    }

    long number(String sql) throws SQLException {
        return (Long) rows(sql).get(0).values().values().iterator().next();
    }

    List<Row> rows(String sql, Object... arguments) throws SQLException {
        List<Row> rows = new ArrayList<>();
        try (PreparedStatement statement = prepare(sql, List.of(arguments)); ResultSet found = statement.executeQuery()) {
            ResultSetMetaData columns = found.getMetaData();
            while (found.next()) {
                Row row = new Row();
                for (int c = 1; c <= columns.getColumnCount(); c++) {
                    row.with(columns.getColumnName(c), found.getObject(c));
                }
                rows.add(row);
            }
        }
        return rows;
    }

    /** All of it or nothing. Foreign keys are checked at the end, so that rows may come in any order. */
    void transaction(Work work) throws SQLException {
        script("BEGIN IMMEDIATE");
        try {
            script("PRAGMA defer_foreign_keys = ON");
            work.run();
            script("COMMIT");
        } catch (SQLException | RuntimeException e) {
            rollBack(e);
            throw e;
        }
    }

    private void rollBack(Exception why) {
        try {
            script("ROLLBACK");
        } catch (SQLException alreadyRolledBack) {
            why.addSuppressed(alreadyRolledBack);
        }
    }

    private PreparedStatement prepare(String sql, List<?> arguments) throws SQLException {
        PreparedStatement statement = connection.prepareStatement(sql);
        for (int i = 0; i < arguments.size(); i++) {
            statement.setObject(i + 1, arguments.get(i));
        }
        return statement;
    }

    @Override
    public void close() throws SQLException {
        connection.close();
    }
}
