package worthsaving.casebook;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static worthsaving.casebook.Cases.keep;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Duration;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class BackupsTest {

    @TempDir
    Path folder;

    private Path file() {
        return folder.resolve("casebook.db");
    }

    private void onDay(int day, Edit... edits) {
        try (Casebook book = Cases.open(file(), Clock.offset(Cases.CLOCK, Duration.ofDays(day)))) {
            for (Edit edit : edits) {
                keep(book.save(edit));
            }
        }
    }

    @Test
    void one_for_each_day_with_a_change_and_the_newest_ten_are_kept() {
        onDay(0, new Edit.AddCase(Cases.listing("A")));
        onDay(0);
        assertThat(Casebook.backups(file())).hasSize(1);
        onDay(0, new Edit.Set("s", Optional.of("same day")));
        onDay(0);
        assertThat(Casebook.backups(file())).as("one a day").hasSize(1);
        onDay(1);
        onDay(2);
        assertThat(Casebook.backups(file())).as("none without a change").hasSize(2);
        for (int day = 3; day < 20; day++) {
            onDay(day, new Edit.Set("s", Optional.of("day " + day)));
        }
        onDay(20);
        assertThat(Casebook.backups(file())).hasSize(Backups.KEPT);
        assertThat(Casebook.backups(file()).get(0).getFileName().toString()).isEqualTo("edit-000000019-2026-03-21.db");
    }

    @Test
    void a_backup_is_a_casebook_with_its_history() {
        onDay(0, new Edit.AddCase(Cases.listing("A")), new Edit.Set("s", Optional.of("1")));
        onDay(1);
        try (Casebook copy = Cases.open(Casebook.backups(file()).get(0))) {
            assertThat(copy.cases()).extracting(CaseFile::listing).containsExactly(Cases.listing("A"));
            keep(copy.undo());
            assertThat(copy.settings()).isEmpty();
        }
    }

    @Test
    void restoring_sets_aside_what_was_there() throws Exception {
        onDay(0, new Edit.AddCase(Cases.listing("A")));
        onDay(1, new Edit.DropCase("A"));
        Path backup = Casebook.backups(file()).get(0);
        Optional<Path> aside = Casebook.restore(backup, file());
        try (Casebook book = Cases.open(file())) {
            assertThat(book.cases()).extracting(CaseFile::id).containsExactly("A");
        }
        try (Casebook old = Cases.open(aside.orElseThrow())) {
            assertThat(old.cases()).isEmpty();
            assertThat(old.history()).hasSize(2);
        }
    }

    @Test
    void a_damaged_casebook_is_restored_from_the_backup_its_message_names() throws Exception {
        onDay(0, new Edit.AddCase(Cases.listing("A")));
        onDay(1);
        Files.write(file(), "garbage garbage garbage".getBytes(StandardCharsets.US_ASCII));
        Opening opening = Casebook.open(file(), Access.WRITE);
        assertThat(opening).isInstanceOf(Opening.Refused.class);
        Path backup = Casebook.backups(file()).get(0);
        assertThat(((Opening.Refused) opening).why().mend()).isEqualTo("restore the backup " + backup);
        Casebook.restore(backup, file());
        onDay(2);
    }

    @Test
    void an_open_casebook_is_not_replaced_and_a_bad_backup_not_used() throws Exception {
        onDay(0, new Edit.AddCase(Cases.listing("A")));
        onDay(1);
        Path backup = Casebook.backups(file()).get(0);
        try (Casebook open = Cases.open(file())) {
            assertThatThrownBy(() -> Casebook.restore(backup, file())).isInstanceOf(IOException.class)
                    .hasMessageContaining("close it first");
            assertThat(open.cases()).hasSize(1);
        }
        Path bad = Files.writeString(folder.resolve("bad.db"), "no casebook");
        byte[] before = Files.readAllBytes(file());
        assertThatThrownBy(() -> Casebook.restore(bad, file())).isInstanceOf(IOException.class)
                .hasMessageContaining("cannot be used");
        assertThat(Files.readAllBytes(file())).isEqualTo(before);
        assertThat(List.of(folder.toFile().list())).noneMatch(n -> n.contains("set-aside") || n.endsWith(".part"));
    }

    /** A folder in the way of the backups: the casebook opens all the same and says so. */
    @Test
    void no_room_for_a_backup_does_not_keep_the_casebook_shut() throws Exception {
        onDay(0, new Edit.AddCase(Cases.listing("A")));
        Files.writeString(folder.resolve("casebook.db-backups"), "a file where the folder should be");
        Opening opening = Casebook.open(file(), Access.WRITE, Cases.CLOCK);
        assertThat(opening).isInstanceOf(Opening.Opened.class);
        assertThat(((Opening.Opened) opening).notes()).singleElement().asString().contains("no backup could be made");
        ((Opening.Opened) opening).casebook().close();
    }
}
