package worthsaving.casebook;

import static org.assertj.core.api.Assertions.assertThat;
import static worthsaving.casebook.Cases.keep;

import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.util.HexFormat;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import worthsaving.quantity.Hours;
import worthsaving.quantity.Money;

/** A casebook of every earlier version opens with everything in it, undo included. */
class EarlierVersionsTest {

    @TempDir
    Path folder;

    static Stream<Integer> versions() {
        return IntStream.range(1, Schema.CURRENT).boxed();
    }

    private Path fileOf(int version) throws Exception {
        Path file = folder.resolve("casebook.db");
        try (Database database = Database.forWriting(file);
                var in = getClass().getResourceAsStream("/casebook/of-version-" + version + ".sql")) {
            assertThat(in).as("a casebook of version " + version).isNotNull();
            Schema.migrate(database, version);
            String rows = new String(in.readAllBytes(), StandardCharsets.UTF_8);
            database.transaction(() -> database.script(rows));
        }
        return file;
    }

    private static void check(Casebook book, int version) {
        assertThat(book.cases()).extracting(CaseFile::id).containsExactly("OLD1", "OLD2");
        CaseFile old = book.caseOf("OLD1").orElseThrow();
        assertThat(old.listing().vehicle().year().get()).isEqualTo(version < 3 ? Optional.of(2014) : Optional.empty());
        CaseFile second = book.caseOf("OLD2").orElseThrow();
        assertThat(second.listing().vehicle().year().get()).contains(version < 3 ? 2025 : 1999);
        assertThat(second.listing().observations()).hasSize(3);
        assertThat(old.hours()).isEqualTo(Hours.of(3.25));
        assertThat(old.receipts()).contains(Money.usd(181.37));
        assertThat(old.journal()).extracting(e -> e.value().text()).containsExactly("valve cover off", "chain kit");
        assertThat(old.forecasts()).singleElement().satisfies(f -> assertThat(f.spreads()).hasSize(2));
        assertThat(old.actual()).hasValueSatisfying(a -> {
            assertThat(a.days()).isEqualTo(40);
            assertThat(a.cost()).isEqualTo(Money.usd(3_150.55));
            assertThat(a.items()).isEqualTo(version < 3 ? Map.of() : Map.of("HV_PACK", true, "WATER_PUMP", false));
            assertThat(a.daysToSell()).isEqualTo(version < 3 ? OptionalDouble.empty() : OptionalDouble.of(9));
        });
        assertThat(old.finished().orElseThrow().speed())
                .isEqualTo(version < 3 ? OptionalDouble.empty() : OptionalDouble.of(1.3));
        assertThat(old.teardown().entries()).hasSize(2);
        assertThat(book.settings()).containsEntry("learn.speed", "off");
        assertThat(book.caseOf("OLD2").orElseThrow().photos()).hasSize(version > 1 ? 1 : 0);
    }

    @ParameterizedTest
    @MethodSource("versions")
    void opens_is_updated_and_can_be_undone_to_its_beginning(int version) throws Exception {
        Path file = fileOf(version);
        Opening opening = Casebook.open(file, Access.WRITE, Cases.CLOCK);
        assertThat(opening).isInstanceOf(Opening.Opened.class);
        assertThat(((Opening.Opened) opening).notes()).singleElement().asString()
                .startsWith("updated from version " + version).contains("before-update-of-version-" + version);
        try (Casebook book = ((Opening.Opened) opening).casebook()) {
            check(book, version);
            keep(book.redo());
            assertThat(book.caseOf("OLD2").orElseThrow().journal()).extracting(e -> e.value().text())
                    .containsExactly("to be redone");
            while (book.toUndo().isPresent()) {
                keep(book.undo());
            }
            assertThat(book.cases()).isEmpty();
            while (book.toRedo().isPresent()) {
                keep(book.redo());
            }
            keep(book.undo());
            check(book, version);
        }
        try (Casebook again = Cases.open(file)) {
            check(again, version);
        }
    }

    @ParameterizedTest
    @MethodSource("versions")
    void a_copy_from_before_the_update_is_kept(int version) throws Exception {
        Path file = fileOf(version);
        Cases.open(file).close();
        Path copy = folder.resolve("casebook.db-backups/before-update-of-version-" + version + ".db");
        try (Database database = Database.immutable(copy)) {
            assertThat(Schema.version(database)).isEqualTo(version);
        }
        Casebook.restore(copy, file);
        try (Casebook book = Cases.open(file)) {
            check(book, version);
        }
    }

    @ParameterizedTest
    @MethodSource("versions")
    void for_reading_the_file_stays_as_it_is(int version) throws Exception {
        Path file = fileOf(version);
        byte[] before = Files.readAllBytes(file);
        try (Casebook book = ((Opening.Opened) Casebook.open(file, Access.READ, Cases.CLOCK)).casebook()) {
            check(book, version);
        }
        assertThat(Files.readAllBytes(file)).isEqualTo(before);
    }

    @ParameterizedTest
    @MethodSource("versions")
    void updated_or_new_the_tables_are_the_same(int version) throws Exception {
        String tables = "SELECT type, name, tbl_name, sql FROM sqlite_schema ORDER BY name";
        List<String> updated;
        Path file = fileOf(version);
        try (Casebook book = Cases.open(file)) {
            updated = book.database().rows(tables).stream().map(r -> r.values().toString()).toList();
        }
        try (Casebook book = Cases.open(folder.resolve("new.db"))) {
            assertThat(book.database().rows(tables)).extracting(r -> r.values().toString()).isEqualTo(updated);
        }
    }

    /** A script that has been in use is never edited: files made by it are about. SHA-256 of each. */
    @ParameterizedTest
    @CsvSource({
        "1, 58759c5cabc6aca1fd5c673cd152c4727f13cb5c952adb25e2da2dcf30e3b965",
        "2, 6240286e53fbcda9dd41777b8751d68c935e498845874243817f46d4732536c9",
        "3, 1999de00b3cbc8ac181ccbdfe0a513659c5ad73bd42f58e7b78657388f045207",
        "4, 662e2907a1b58070ee452e34b008ece726e6ef57c8356f1c76784526c01df893"
    })
    void the_scripts_are_as_they_were(int version, String sha256) throws Exception {
        byte[] digest = MessageDigest.getInstance("SHA-256").digest(Schema.script(version).getBytes(StandardCharsets.UTF_8));
        assertThat(HexFormat.of().formatHex(digest)).isEqualTo(sha256);
    }

    /** An update that fails half way leaves the version from before. */
    @Test
    void an_update_is_whole_or_not_at_all() throws Exception {
        Path file = fileOf(1);
        try (Database database = Database.forWriting(file)) {
            database.script("CREATE TABLE photo_of_case (x TEXT)");
        }
        assertThat(Casebook.open(file, Access.WRITE, Cases.CLOCK)).isInstanceOf(Opening.Refused.class);
        try (Database database = Database.forWriting(file)) {
            assertThat(Schema.version(database)).isEqualTo(1);
            assertThat(database.number("SELECT count(*) FROM sqlite_schema WHERE name = 'photo'")).isZero();
            database.script("DROP TABLE photo_of_case");
        }
        try (Casebook book = Cases.open(file)) {
            check(book, 1);
        }
    }
}
