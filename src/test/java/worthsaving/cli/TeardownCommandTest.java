package worthsaving.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class TeardownCommandTest {

    private static final String LOT = "shared/samples/lot.csv";

    @TempDir
    private Path folder;

    @Test
    void tells_what_to_do_with_the_sample_car() {
        Run run = Run.of("teardown", LOT, "--id", "L01", "--journal", "shared/samples/teardown_L01.csv");

        assertThat(run.code()).isEqualTo(ExitCode.OK);
        assertThat(run.out()).contains("Spent so far, not counted: 540 in receipts and 7.0 hours",
                "What can be done now", "go on and finish", "sell it in pieces", "To finish", "Look in this order",
                "Work for an owner", "Cautions", "not appraisal");
        assertThat(run.out()).containsAnyOf("GO ON", "LOOK FIRST", "STOP");
    }

    @Test
    void bad_rows_of_the_journal_are_listed_and_the_rest_is_used() throws IOException {
        Path journal = Files.writeString(folder.resolve("j.csv"),
                "stage,kind,what,value,when\nbought,paid,price,900,\ncover,opened,ROOF_OFF,,\n");
        Run run = Run.of("teardown", LOT, "--id", "L12", "--journal", journal.toString(), "--json");

        assertThat(run.code()).isEqualTo(ExitCode.SOME_ROWS_REFUSED);
        assertThat(run.err()).contains("j.csv, line 3, column what: 'ROOF_OFF' is not an access step");
        assertThat(run.out()).contains("\"spent_not_counted\"", "worthsaving/teardown");
    }

    @Test
    void a_journal_that_is_not_there_is_said_so() {
        Run run = Run.of("teardown", LOT, "--id", "L12", "--journal", "nowhere.csv");

        assertThat(run.code()).isEqualTo(ExitCode.FILE_UNUSABLE);
        assertThat(run.err()).contains("There is no file nowhere.csv");
    }

    @Test
    void a_case_of_the_casebook_gives_the_same_as_its_table() throws IOException {
        Path book = folder.resolve("casebook.db");
        Books.ok(book, "add", LOT);
        assertThat(Books.ok(book, "import", "L01", "shared/samples/teardown_L01.csv").out())
                .isEqualTo("Kept: import 10 lines from teardown_L01.csv into the journal of L01\n");

        Run table = Run.of("teardown", LOT, "--id", "L01", "--journal", "shared/samples/teardown_L01.csv", "--json");
        Run kept = Run.of("teardown", "L01", "--casebook", book.toString(), "--json");
        assertThat(kept.err()).isEmpty();
        assertThat(kept.out()).isEqualTo(table.out());

        assertThat(Run.of("teardown", "XX", "--casebook", book.toString()).err()).contains("There is no case XX");
        assertThat(Run.of("teardown", "L01", "--casebook", book.toString(), "--journal", "x.csv").err())
                .contains("casebook import");
    }

    @Test
    void a_journal_goes_out_as_a_table_and_comes_in_again() throws IOException {
        Path book = folder.resolve("casebook.db");
        Path lot = Files.writeString(folder.resolve("lot.csv"), "id,year,make,model,odometer,price,present\n"
                + "=A1,2014,honda,civic,98000,900,NO_CRANK\nA2,2014,honda,civic,98000,900,NO_CRANK\n");
        Books.worked(book, lot.toString());
        Books.ok(book, "finding", "=A1", "KNOCKS", "--seller");
        Path table = Files.writeString(folder.resolve("out.csv"), Books.ok(book, "show", "=A1", "--csv").out());

        assertThat(Books.ok(book, "import", "A2", table.toString()).out()).contains("import 9 lines");
        Path again = Files.writeString(folder.resolve("again.csv"), Books.ok(book, "show", "A2", "--csv").out());
        assertThat(essentials(again)).isEqualTo(essentials(table)).anyMatch(l -> l.contains("seller"));
        Run twice = Books.ok(book, "import", "A2", table.toString());
        assertThat(twice.err()).contains("9 lines are in the journal already");
        assertThat(twice.out()).isEmpty();
    }

    /** Stage, kind, what, value, day and witness: what a teardown journal holds. */
    private static List<String> essentials(Path table) throws IOException {
        return Files.readAllLines(table).stream().map(l -> String.join(",", List.of(l.split(",")).subList(0, 6))).toList();
    }

    @Test
    void bad_lines_are_left_out_of_the_casebook_and_told() throws IOException {
        Path book = folder.resolve("casebook.db");
        Books.ok(book, "add", LOT);
        Path journal = Files.writeString(folder.resolve("j.csv"),
                "stage,kind,what,value,when,witness\na,paid,tow,90,,\na,opened,ROOF_OFF,,,\na,finding,KNOCKS,present,,me\n");
        Run run = Run.of("casebook", "import", "L12", journal.toString(), "--casebook", book.toString());
        assertThat(run.code()).isEqualTo(ExitCode.SOME_ROWS_REFUSED);
        assertThat(run.out()).contains("import 1 line from j.csv");
        assertThat(run.err()).contains("line 3, column what: 'ROOF_OFF'", "line 4, column witness: 'me' must be own_eyes");
    }

    @Test
    void the_ceiling_that_an_owner_agreed_to_is_counted_down() {
        Run run = Run.of("teardown", LOT, "--id", "L01", "--journal", "shared/samples/teardown_L01.csv", "--rate", "100",
                "--ceiling", "4000");
        assertThat(run.out()).contains("Agreed 4,000; on the bill 1,240 (hours 700, receipts 540); 2,760 of it left.",
                "that 2,760 is not enough", "call the owner when");
        assertThat(Run.of("teardown", LOT, "--id", "L01", "--journal", "shared/samples/teardown_L01.csv", "--rate", "100",
                "--ceiling", "1000").out()).contains("passed by 240: call before anything more is done.");
    }

    @Test
    void questions_are_ready_to_copy() {
        Run run = Run.of("judge", LOT, "--id", "L22", "--questions");

        assertThat(run.code()).isEqualTo(ExitCode.OK);
        assertThat(run.out()).containsAnyOf("- ", "No answer would change");
    }
}
