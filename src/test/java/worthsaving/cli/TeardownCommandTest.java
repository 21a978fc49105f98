package worthsaving.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
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
        assertThat(run.out()).contains("Spent so far, not counted: 2,554 in receipts and 7.0 hours",
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
    void questions_are_ready_to_copy() {
        Run run = Run.of("judge", LOT, "--id", "L22", "--questions");

        assertThat(run.code()).isEqualTo(ExitCode.OK);
        assertThat(run.out()).containsAnyOf("- ", "No answer would change");
    }
}
