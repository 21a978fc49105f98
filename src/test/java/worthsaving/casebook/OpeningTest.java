package worthsaving.casebook;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeFalse;
import static worthsaving.casebook.Cases.keep;

import java.io.IOException;
import java.io.RandomAccessFile;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import worthsaving.quantity.Seed;

/** What cannot be opened is said clearly and left as it was. */
class OpeningTest {

    @TempDir
    Path folder;

    private Path file;
    private List<CaseFile> cases;

    @BeforeEach
    void a_casebook_with_something_in_it() {
        file = folder.resolve("casebook.db");
        SplittableRandom random = Seed.DEFAULT.derive("opening").generator();
        try (Casebook book = Cases.open(file)) {
            for (int i = 0; i < 60; i++) {
                keep(book.save(Cases.edit(book, random)));
            }
            cases = book.cases();
        }
    }

    private Trouble refused(Path of) {
        byte[] before = bytes(of);
        Opening opening = Casebook.open(of, Access.WRITE, Cases.CLOCK);
        assertThat(opening).isInstanceOf(Opening.Refused.class);
        assertThat(bytes(of)).as("untouched").isEqualTo(before);
        return ((Opening.Refused) opening).why();
    }

    private static byte[] bytes(Path of) {
        try {
            return Files.isRegularFile(of) ? Files.readAllBytes(of) : new byte[0];
        } catch (IOException e) {
            throw new AssertionError(e);
        }
    }

    @Test
    void a_file_of_a_newer_version_is_refused() throws Exception {
        try (Database database = Database.forWriting(file)) {
            database.script("PRAGMA user_version = 99");
        }
        assertThat(refused(file).text()).contains("written by a newer version").contains("of version 99")
                .contains("use the newer version; the file was not touched");
        assertThat(Casebook.open(file, Access.READ)).isInstanceOf(Opening.Refused.class);
    }

    @Test
    void a_file_of_another_program_is_refused() throws Exception {
        Path other = folder.resolve("other.db");
        try (Database database = Database.forWriting(other)) {
            database.script("CREATE TABLE songs (title TEXT)");
        }
        assertThat(refused(other).text()).contains("belongs to another program");
    }

    @Test
    void what_is_no_database_is_refused() throws Exception {
        Files.writeString(folder.resolve("text.db"), "These are a few words and no casebook.");
        assertThat(refused(folder.resolve("text.db")).text())
                .contains("is damaged or is no casebook").contains("no backup beside it");
        assertThat(refused(folder).text()).contains("is a folder");
    }

    @Test
    void a_missing_drive_is_said_to_be_missing() {
        Path gone = folder.resolve("stick").resolve("casebook.db");
        assertThat(Casebook.open(gone, Access.WRITE)).isInstanceOfSatisfying(Opening.Refused.class,
                r -> assertThat(r.why().text()).contains("there is no folder").contains("connect its drive"));
        assertThat(folder.resolve("stick")).doesNotExist();
        assertThat(Casebook.open(folder.resolve("none.db"), Access.READ)).isInstanceOf(Opening.Refused.class);
        assertThat(folder.resolve("none.db")).doesNotExist();
    }

    /** A file emptied by an accident is not taken for a new casebook while there are backups of it. */
    @Test
    void an_emptied_file_points_to_its_backup() throws Exception {
        try (Casebook book = Cases.open(file)) {
            book.backup();
        }
        Files.write(file, new byte[0]);
        assertThat(refused(file).text()).contains("is empty").contains("restore the backup").contains("edit-");
    }

    /** Damage anywhere is found on opening, or touched nothing that is in use; never an exception, never a write. */
    @ParameterizedTest
    @ValueSource(ints = {0, 20, 100, 1_000, 4_096, 4_100, 9_000, 12_400, 20_481, 30_000})
    void damage_is_told_and_never_written_over(int at) throws Exception {
        try (RandomAccessFile raw = new RandomAccessFile(file.toFile(), "rw")) {
            raw.seek(Math.min(at, raw.length() - 64));
            raw.write("################################################".getBytes(StandardCharsets.US_ASCII));
        }
        byte[] before = bytes(file);
        Opening opening = Casebook.open(file, Access.WRITE, Cases.CLOCK);
        if (opening instanceof Opening.Refused refused) {
            assertThat(refused.why().text()).containsAnyOf("damaged", "belongs to another program", "newer version");
            assertThat(bytes(file)).isEqualTo(before);
        } else if (opening instanceof Opening.ReadOnly readOnly) {
            assertThat(readOnly.why().text()).contains("damaged").contains("shown for reading only");
            readOnly.casebook().close();
            assertThat(bytes(file)).isEqualTo(before);
        } else {
            try (Casebook book = ((Opening.Opened) opening).casebook()) {
                assertThat(book.cases()).as("damage in unused space").isEqualTo(cases);
            }
        }
    }

    @Test
    void a_file_cut_short_is_damaged() throws Exception {
        try (RandomAccessFile raw = new RandomAccessFile(file.toFile(), "rw")) {
            raw.setLength(raw.length() - 5_000);
        }
        Opening opening = Casebook.open(file, Access.WRITE, Cases.CLOCK);
        assertThat(opening).isNotInstanceOf(Opening.Opened.class);
        if (opening instanceof Opening.ReadOnly readOnly) {
            readOnly.casebook().close();
        }
    }

    @Test
    void for_reading_nothing_is_written() {
        byte[] before = bytes(file);
        Opening opening = Casebook.open(file, Access.READ, Cases.CLOCK);
        try (Casebook book = ((Opening.Opened) opening).casebook()) {
            assertThat(book.cases()).isEqualTo(cases);
            assertThat(book.readOnly()).isTrue();
            assertThat(book.save(new Edit.Set("a", Optional.of("b")))).isInstanceOf(Saving.Failed.class);
            assertThat(book.undo()).isInstanceOf(Saving.Failed.class);
        }
        assertThat(bytes(file)).isEqualTo(before);
    }

    /** Permissions do not bind the superuser, so there this is skipped. */
    @Test
    void in_a_folder_that_may_not_be_written_it_is_shown_for_reading() throws Exception {
        assumeFalse("root".equals(System.getProperty("user.name")), "the superuser may write everywhere");
        Files.setPosixFilePermissions(folder, PosixFilePermissions.fromString("r-xr-xr-x"));
        try {
            Opening opening = Casebook.open(file, Access.WRITE, Cases.CLOCK);
            assertThat(opening).isInstanceOf(Opening.ReadOnly.class);
            try (Casebook book = ((Opening.ReadOnly) opening).casebook()) {
                assertThat(((Opening.ReadOnly) opening).why().text()).contains("may not be written");
                assertThat(book.cases()).isEqualTo(cases);
            }
            Files.setPosixFilePermissions(folder, PosixFilePermissions.fromString("rwxr-xr-x"));
            Files.writeString(folder.resolve("casebook.db-wal"), "edits that are in no file yet");
            Files.setPosixFilePermissions(folder, PosixFilePermissions.fromString("r-xr-xr-x"));
            assertThat(Casebook.open(file, Access.WRITE, Cases.CLOCK)).isInstanceOfSatisfying(Opening.Refused.class,
                    r -> assertThat(r.why().text()).contains("copy both files together"));
        } finally {
            Files.setPosixFilePermissions(folder, PosixFilePermissions.fromString("rwxr-xr-x"));
        }
    }
}
