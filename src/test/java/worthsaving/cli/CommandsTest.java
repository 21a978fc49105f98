package worthsaving.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import picocli.CommandLine;
import worthsaving.quantity.Seed;

/** Options that commands share, and what happens when the surroundings are wrong. */
class CommandsTest {

    @TempDir
    private Path folder;

    private final StringWriter out = new StringWriter();
    private final StringWriter err = new StringWriter();

    @AfterEach
    void forget() {
        System.clearProperty(Resources.PROPERTY);
    }

    private int run(String... args) {
        return Main.run(new PrintWriter(out), new PrintWriter(err), args);
    }

    private Path table(String row) throws IOException {
        return Files.writeString(folder.resolve("t.csv"), "year,make,model,odometer,price\n" + row + "\n");
    }

    @Test
    void the_seed_is_taken_before_and_after_the_command() {
        Main before = new Main();
        new CommandLine(before).parseArgs("--seed", "7", "lot", "check", "x.csv");
        Main after = new Main();
        new CommandLine(after).parseArgs("lot", "check", "x.csv", "--seed", "7");

        assertThat(before.seed()).isEqualTo(new Seed(7)).isEqualTo(after.seed());
        assertThat(new Main().seed()).isEqualTo(Seed.DEFAULT);
    }

    @ParameterizedTest
    @CsvSource({"2012-05-01, 1", "2013-01-01, 0"})
    void today_bounds_the_model_year(String today, int code) throws IOException {
        assertThat(run("lot", "check", table("2014,ford,focus,90000,1500").toString(), "--today", today))
                .isEqualTo(code);
    }

    @Test
    void unit_and_currency_are_taken_in_any_case() throws IOException {
        assertThat(run("lot", "check", table("2014,ford,focus,90000,$1500").toString(), "--unit", "KM",
                "--currency", "cad")).isZero();
        assertThat(run("lot", "check", "x.csv", "--unit", "leagues")).isEqualTo(ExitCode.USAGE);
        assertThat(run("lot", "check", "x.csv", "--today", "tomorrow")).isEqualTo(ExitCode.USAGE);
        assertThat(err.toString())
                .contains("--unit", "--today", "worthsaving lot check --help")
                .doesNotContain("Exception");
    }

    @Test
    void a_place_that_cannot_be_written_to_is_named() throws IOException {
        int code = run("lot", "check", table("2014,ford,focus,90000,1500").toString(), "--refused",
                folder.resolve("nowhere/r.csv").toString());

        assertThat(code).isEqualTo(ExitCode.FILE_UNUSABLE);
        assertThat(err.toString()).contains("nowhere").doesNotContain("Exception");
    }

    @Test
    void an_installation_without_its_folders_says_so() throws IOException {
        System.setProperty(Resources.PROPERTY, folder.toString());

        assertThat(run("lot", "check", table("2014,ford,focus,90000,1500").toString()))
                .isEqualTo(ExitCode.INSTALLATION_FAULTY);
        assertThat(err.toString()).contains(folder.toString());
    }

    @Test
    void an_empty_catalogue_stops_commands_with_the_first_fault() throws IOException {
        Files.createDirectories(folder.resolve("shared/catalogue"));
        System.setProperty(Resources.PROPERTY, folder.toString());

        assertThat(run("lot", "check", table("2014,ford,focus,90000,1500").toString()))
                .isEqualTo(ExitCode.INSTALLATION_FAULTY);
        assertThat(err.toString()).contains("fault(s), the first: ", "worthsaving catalogue check");
        assertThat(run("catalogue", "check")).isEqualTo(ExitCode.INSTALLATION_FAULTY);
        assertThat(out.toString()).contains("items.csv");
    }

    @Test
    void an_advert_cannot_steer_the_terminal() throws IOException {
        run("lot", "check", table("2014,\u001b[31mford,focus,x\u001b[2J,1500").toString());

        assertThat(out.toString()).contains("row 2").doesNotContain("\u001b");
    }

    @Test
    void json_of_a_file_that_is_no_table_is_still_json() throws IOException {
        int code = run("lot", "check", "--json", Files.writeString(folder.resolve("e.csv"), "").toString());

        assertThat(code).isEqualTo(ExitCode.FILE_UNUSABLE);
        assertThat(new ObjectMapper().readTree(out.toString())
                .at("/summary/readable").asBoolean()).isFalse();
    }

    @Test
    void results_are_the_same_twice() {
        run("lot", "check", "shared/samples/bad/findings.csv", "--today", "2026-11-25");
        String first = out.toString();
        out.getBuffer().setLength(0);
        run("lot", "check", "shared/samples/bad/findings.csv", "--today", "2026-11-25");

        assertThat(out.toString()).isEqualTo(first).isNotBlank();
    }
}
