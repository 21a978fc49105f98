package worthsaving.casebook;

import static org.assertj.core.api.Assertions.assertThat;
import static worthsaving.casebook.Cases.keep;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Duration;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import worthsaving.casebook.JournalEntry.What;

/** Drives fill up and vanish, clocks go wrong; no kept edit is lost by it. */
class TroubleTest {

    @TempDir
    Path folder;

    private static Edit note(String id, String text) {
        return new Edit.Write(id, new JournalEntry(Cases.NOON, "", new What.Note(), text));
    }

    private static String failed(Saving saving) {
        assertThat(saving).isInstanceOf(Saving.Failed.class);
        return ((Saving.Failed) saving).why().text();
    }

    /** SQLite reports a file at its greatest size as it reports a full drive. */
    @Test
    void a_full_drive_loses_the_edit_it_could_not_keep_and_no_other() throws Exception {
        Path file = folder.resolve("casebook.db");
        int kept = 0;
        try (Casebook book = Cases.open(file)) {
            keep(book.save(new Edit.AddCase(Cases.listing("A"))));
            long pages = book.database().number("PRAGMA page_count");
            book.database().number("PRAGMA max_page_count = " + (pages + 3));
            Saving saving = book.save(note("A", "x".repeat(1_000)));
            while (saving instanceof Saving.Done) {
                kept++;
                saving = book.save(note("A", "x".repeat(1_000)));
            }
            assertThat(failed(saving)).contains("no room left").contains("free some space");
            assertThat(kept).isPositive();
            assertThat(book.caseOf("A").orElseThrow().journal()).hasSize(kept);
            assertThat(failed(book.save(note("A", "y".repeat(5_000))))).as("still full").contains("no room left");

            book.database().number("PRAGMA max_page_count = 1000000");
            keep(book.save(note("A", "room again")));
            keep(book.undo());
        }
        try (Casebook book = Cases.open(file)) {
            assertThat(book.caseOf("A").orElseThrow().journal()).hasSize(kept);
            assertThat(Schema.damage(book.database())).isEmpty();
        }
    }

    /** Its folder moved away under an open casebook, as when a stick is pulled and another takes its place. */
    @Test
    void a_vanished_drive_is_noticed_before_an_edit_goes_nowhere() throws Exception {
        Path stick = Files.createDirectory(folder.resolve("stick"));
        Path away = folder.resolve("away");
        try (Casebook book = Cases.open(stick.resolve("casebook.db"))) {
            keep(book.save(new Edit.AddCase(Cases.listing("A"))));
            Files.move(stick, away);
            assertThat(failed(book.save(note("A", "into nowhere")))).contains("no longer where it was opened")
                    .contains("connect the drive");
            Files.createDirectory(stick);
            Files.copy(away.resolve("casebook.db"), stick.resolve("casebook.db"));
            assertThat(failed(book.save(note("A", "into another file")))).contains("no longer where it was opened");
        }
        for (Path place : List.of(stick, away)) {
            try (Casebook book = Cases.open(place.resolve("casebook.db"))) {
                assertThat(book.cases()).extracting(CaseFile::id).containsExactly("A");
                assertThat(book.caseOf("A").orElseThrow().journal()).isEmpty();
            }
        }
    }

    @Test
    void a_drive_that_comes_back_takes_edits_again() throws Exception {
        Path stick = Files.createDirectory(folder.resolve("stick"));
        try (Casebook book = Cases.open(stick.resolve("casebook.db"))) {
            keep(book.save(new Edit.AddCase(Cases.listing("A"))));
            Files.move(stick, folder.resolve("away"));
            failed(book.save(note("A", "gone")));
            Files.move(folder.resolve("away"), stick);
            keep(book.save(note("A", "back")));
        }
    }

    /** Edits are ordered by number; a clock set back a year changes nothing but the dates told. */
    @Test
    void a_clock_that_runs_backwards_disturbs_nothing() {
        Path file = folder.resolve("casebook.db");
        for (int year = 0; year < 4; year++) {
            try (Casebook book = Cases.open(file, years(-year))) {
                keep(book.save(year == 0 ? new Edit.AddCase(Cases.listing("A")) : note("A", "year " + year)));
            }
        }
        try (Casebook book = Cases.open(file, years(-9))) {
            assertThat(book.history()).extracting(Edited::number).containsExactly(1L, 2L, 3L, 4L);
            assertThat(book.history()).extracting(Edited::at).isSortedAccordingTo((a, b) -> b.compareTo(a));
            assertThat(book.caseOf("A").orElseThrow().journal()).extracting(e -> e.value().text())
                    .containsExactly("year 1", "year 2", "year 3");
            keep(book.undo());
            assertThat(book.caseOf("A").orElseThrow().journal()).hasSize(2);
            assertThat(Casebook.backups(file)).as("a backup for every change, whatever the date").hasSize(4);
        }
    }

    /** A file changed behind the back of the window: the window notices instead of writing over it. */
    @Test
    void edits_by_another_program_are_noticed() throws Exception {
        Path file = folder.resolve("casebook.db");
        try (Casebook book = Cases.open(file)) {
            keep(book.save(new Edit.AddCase(Cases.listing("A"))));
            keep(book.save(new Edit.Set("name", Optional.of("mine"))));
            try (Database other = Database.forWriting(file)) {
                other.script("UPDATE setting SET value = 'theirs'");
            }
            assertThat(failed(book.undo())).contains("changed by another program");
            assertThat(book.settings()).containsEntry("name", "theirs");
            try (Database other = Database.forWriting(file)) {
                other.script("INSERT INTO edit (at, kind, label) VALUES ('2026-01-01T00:00:00Z', 'EDIT', 'theirs')");
            }
            assertThat(failed(book.save(note("A", "mine")))).contains("another program has changed this casebook")
                    .contains("open it again");
        }
    }

    private static Clock years(int years) {
        return Clock.offset(Clock.fixed(Cases.NOON, ZoneOffset.UTC), Duration.ofDays(365L * years));
    }
}
