package worthsaving.casebook;

import static org.assertj.core.api.Assertions.assertThat;
import static worthsaving.casebook.Cases.keep;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The second window on one casebook is told, reads along and overwrites nothing. */
class TwoWindowsTest {

    @TempDir
    Path folder;

    private Path file() {
        return folder.resolve("casebook.db");
    }

    private static Opening.ReadOnly readOnly(Path file) {
        Opening opening = Casebook.open(file, Access.WRITE, Cases.CLOCK);
        assertThat(opening).isInstanceOf(Opening.ReadOnly.class);
        return (Opening.ReadOnly) opening;
    }

    @Test
    void in_one_program() {
        try (Casebook first = Cases.open(file())) {
            keep(first.save(new Edit.AddCase(Cases.listing("A"))));
            Opening.ReadOnly second = readOnly(file());
            try (Casebook book = second.casebook()) {
                assertThat(second.why().text()).contains("open in another window of this program (process ")
                        .contains("since 2026-03-01T12:00:00Z").contains("shown for reading only");
                assertThat(book.save(new Edit.DropCase("A"))).isInstanceOf(Saving.Failed.class);
                keep(first.save(new Edit.AddCase(Cases.listing("B"))));
                assertThat(book.cases()).as("reads along").extracting(CaseFile::id).containsExactly("A", "B");
            }
            assertThat(readOnly(file()).casebook()).satisfies(Casebook::close);
            keep(first.save(new Edit.AddCase(Cases.listing("C"))));
        }
        try (Casebook next = Cases.open(file())) {
            assertThat(next.cases()).extracting(CaseFile::id).containsExactly("A", "B", "C");
        }
    }

    @Test
    void by_another_name_of_the_same_file() throws Exception {
        try (Casebook first = Cases.open(file())) {
            keep(first.save(new Edit.AddCase(Cases.listing("A"))));
            Path link = Files.createSymbolicLink(folder.resolve("link.db"), file());
            readOnly(link).casebook().close();
            readOnly(folder.resolve(".").resolve("casebook.db")).casebook().close();
        }
    }

    /** The lock goes with the process, however that ends; what is left of it keeps nobody out. */
    @Test
    void in_another_process_that_is_killed() throws Exception {
        try (Child child = Child.start(file(), Child.HOLD)) {
            child.nextNumber();
            Opening.ReadOnly second = readOnly(file());
            try (Casebook book = second.casebook()) {
                assertThat(second.why().text()).contains("open in another window (process " + child.pid() + " since ");
                assertThat(book.cases()).hasSize(1);
            }
            child.kill();
            child.waitFor();
        }
        assertThat(folder.resolve("casebook.db-lock")).exists();
        try (Casebook book = Cases.open(file())) {
            keep(book.save(new Edit.Set("after", Optional.of("the kill"))));
            assertThat(book.cases()).hasSize(1);
        }
    }
}
