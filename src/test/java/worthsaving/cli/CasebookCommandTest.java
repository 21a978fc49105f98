package worthsaving.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import worthsaving.casebook.Access;
import worthsaving.casebook.Casebook;
import worthsaving.casebook.Opening;

class CasebookCommandTest {

    private static final String LOT = "shared/samples/lot.csv";

    @TempDir
    Path folder;

    private Run run(String... arguments) {
        List<String> all = new ArrayList<>(List.of("casebook"));
        all.addAll(List.of(arguments));
        all.addAll(List.of("--casebook", folder.resolve("casebook.db").toString()));
        return Run.of(all.toArray(String[]::new));
    }

    private Run ok(String... arguments) {
        Run run = run(arguments);
        assertThat(run.code()).as(run.err()).isZero();
        return run;
    }

    @Test
    void a_car_from_the_lot_to_the_record() throws Exception {
        assertThat(ok("add", LOT).out()).startsWith("Kept: add ").contains(" cases from lot.csv");
        assertThat(ok("forecast", "L03").out()).contains("Kept: keep a forecast of L03");
        ok("finding", "L03", "HV_PACK", "module 7 is dead", "--stage", "opened up");
        ok("hours", "L03", "9", "pack out and in", "--planned", "6");
        ok("receipt", "L03", "1480.50", "pack", "--planned", "1400");
        ok("note", "L03", "fan", "was", "full", "of", "hair");
        ok("note", "L03", "go", "on", "--decision");
        Path picture = Files.writeString(folder.resolve("pack.jpg"), "not really a picture");
        ok("photo", "L03", picture.toString(), "the pack");
        ok("finish", "L03", "--paid", "2000", "--sold", "6100", "--bought-on", "2099-01-02", "--sold-on", "2099-02-01",
                "--days-to-sell", "7", "--failed", "HV_PACK");

        assertThat(ok("show", "L03").out()).contains("9.0 h of 6.0 planned", "paid 1,481 of 1,400 planned",
                "fan was full of hair", "decision", "HV_PACK present", "Photo 1: pack.jpg the pack", "by price model ",
                "Finished: sold 6,100, cost 3,481, left 2,620 before own hours, 30 days, 9.0 h");
        String record = ok("record").out();
        assertThat(record).startsWith("One finished car proves little").contains("value, money", "cost, money",
                "hours, h", "days, days", "Failed items: Brier score", "hours needed against the estimate: moved from ",
                "parts cost against the estimate: moved from ", "days to sell once ready: moved from ", "HV_PACK: moved from ",
                "by 1 car");
        JsonNode json = new ObjectMapper().readTree(ok("record", "--json").out());
        assertThat(json.get("quantities")).hasSize(4);
        assertThat(json.get("lessons")).hasSize(3);

        ok("learning", "--off", "speed,items");
        assertThat(ok("record").out()).contains("(switched off)");
        assertThat(ok("forecast", "L01").out()).contains("Your record, parts cost").doesNotContain("Your record, hours");
        ok("learning", "--on", "speed");
        assertThat(ok("forecast", "L01").out()).contains("Your record, hours needed");
    }

    @Test
    void undo_and_redo_reach_over_runs() {
        ok("add", LOT);
        String all = ok("list").out();
        ok("note", "L01", "one");
        assertThat(ok("undo").out()).isEqualTo("Kept: undo: write in the journal of L01\n");
        ok("drop", "L02");
        assertThat(ok("list").out()).doesNotContain("L02");
        ok("undo");
        assertThat(ok("list").out()).isEqualTo(all);
        ok("redo");
        assertThat(ok("list").out()).doesNotContain("L02");
        assertThat(run("redo").err()).contains("there is nothing to redo");
    }

    @Test
    void cases_already_there_are_left_as_they_are() {
        ok("add", LOT);
        Run again = run("add", LOT);
        assertThat(again.code()).isEqualTo(ExitCode.SOME_ROWS_REFUSED);
        assertThat(again.err()).contains("L01 is in the casebook already and was left as it is");
    }

    @Test
    void what_is_wrong_is_said_with_its_mend() throws Exception {
        assertThat(run("list").code()).isEqualTo(ExitCode.FILE_UNUSABLE);
        assertThat(run("list").err()).contains("there is no casebook");
        ok("add", LOT);
        assertThat(run("show", "XX").err()).contains("There is no case XX");
        assertThat(run("note", "XX", "hello").err()).contains("there is no case XX");
        assertThat(run("finding", "L01", "NO_SUCH").err()).contains("no finding or failure item 'NO_SUCH'");
        assertThat(run("opened", "L01", "ROOF_OFF").err()).contains("no access step 'ROOF_OFF'");
        assertThat(run("part", "L01", "NOPE", "3").err()).contains("no failure item 'NOPE'");
        assertThat(run("mended", "L01", "NOPE").err()).contains("no failure item 'NOPE'");
        assertThat(run("import", "L01", "nowhere.csv").code()).isEqualTo(ExitCode.FILE_UNUSABLE);
        assertThat(run("hours", "L01", "--", "-2").err()).contains("hours must be zero or more");
        assertThat(run("finish", "L01", "--paid", "1", "--sold", "2", "--bought-on", "2026-02-01", "--sold-on",
                "2026-01-01").err()).contains("before it was bought");
        assertThat(run("finish", "L01", "--paid", "1", "--sold", "2", "--bought-on", "2026-01-01", "--failed", "HV_PACK",
                "--sound", "HV_PACK").err()).contains("as failed and as sound");
        assertThat(run("learning").code()).isEqualTo(ExitCode.USAGE);
        Files.writeString(folder.resolve("casebook.db"), "no casebook any more");
        assertThat(run("undo").code()).isEqualTo(ExitCode.FILE_UNUSABLE);
        assertThat(run("undo").err()).contains("is damaged or is no casebook");
    }

    @Test
    void a_window_that_has_it_open_keeps_commands_from_writing_but_not_from_reading() {
        ok("add", LOT);
        Opening opening = Casebook.open(folder.resolve("casebook.db"), Access.WRITE);
        try (Casebook window = ((Opening.Opened) opening).casebook()) {
            Run note = run("note", "L01", "from outside");
            assertThat(note.code()).isEqualTo(ExitCode.FILE_UNUSABLE);
            assertThat(note.err()).contains("is open in another window");
            assertThat(ok("list").out()).contains("L01");
            assertThat(window.caseOf("L01").orElseThrow().journal()).isEmpty();
        }
    }

    @Test
    void a_backup_is_restored() throws Exception {
        ok("add", LOT);
        String backup = ok("backup").out().strip();
        Files.writeString(folder.resolve("casebook.db"), "an accident");
        assertThat(run("list").err()).contains("restore the backup " + backup);
        assertThat(ok("restore", backup).out()).contains("what was there is now").contains("set-aside-1");
        assertThat(ok("list").out()).contains("L01");
    }
}
