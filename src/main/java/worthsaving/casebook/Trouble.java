package worthsaving.casebook;

import java.sql.SQLException;
import org.sqlite.SQLiteErrorCode;
import org.sqlite.SQLiteException;

/**
 * Why the casebook could not do something, and what would mend it, in the user's words.
 *
 * @param reason what is wrong
 * @param mend what to do
 */
public record Trouble(String reason, String mend) {

    static Trouble of(SQLException error) {
        SQLiteErrorCode code = error instanceof SQLiteException e ? e.getResultCode() : SQLiteErrorCode.SQLITE_ERROR;
        String name = code.name();
        if (code == SQLiteErrorCode.SQLITE_FULL) {
            return new Trouble("there is no room left on the drive, or the casebook has reached its greatest size",
                    "free some space, then do it again; everything kept before is there");
        }
        if (name.startsWith("SQLITE_IOERR") || name.startsWith("SQLITE_CANTOPEN")) {
            return new Trouble("the drive with the casebook cannot be reached or reports an error (" + name + ")",
                    "connect the drive, then open the casebook again");
        }
        if (name.startsWith("SQLITE_READONLY") || code == SQLiteErrorCode.SQLITE_PERM) {
            return new Trouble("the casebook may not be written", "see the permissions of the file and of its folder");
        }
        if (name.startsWith("SQLITE_CORRUPT") || code == SQLiteErrorCode.SQLITE_NOTADB) {
            return new Trouble("the casebook is damaged", "restore a backup");
        }
        if (name.startsWith("SQLITE_BUSY") || name.startsWith("SQLITE_LOCKED")) {
            return new Trouble("another program is writing to the casebook", "wait a moment, then do it again");
        }
        return new Trouble("the casebook cannot do this: " + error.getMessage(), "report it with what you did");
    }

    String text() {
        return reason + "; " + mend;
    }
}
