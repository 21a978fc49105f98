package worthsaving.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.StringReader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Tables, adverts and code lists as people bring them; all invented. */
class IntakeCommandsTest {

    private static final String TABLE = "Nr;Gebot;km-Stand;Bj.;Marke;Modell;Bemerkung\n"
            + "1;1.234,56;210.000;2012;Opel;Astra;=1+1\n2;abc;90.000;2013;Ford;Focus;=1+1\n";

    @TempDir
    private Path folder;

    @BeforeEach
    void ownSettings() {
        System.setProperty(ColumnOptions.FOLDER, folder.resolve("settings").toString());
    }

    @AfterEach
    void forget() {
        System.clearProperty(ColumnOptions.FOLDER);
    }

    private String file(String name, String text) throws IOException {
        return Files.writeString(folder.resolve(name), text).toString();
    }

    @Test
    void a_preview_says_what_each_column_is_taken_for_and_why() throws IOException {
        String table = file("a.csv", TABLE);

        Run unknown = Run.of("lot", "preview", table);
        Run told = Run.of("lot", "preview", table, "--column", "price=Gebot");
        Run remembered = Run.of("lot", "preview", file("b.csv", TABLE));

        assertThat(unknown.code()).isEqualTo(ExitCode.FILE_UNUSABLE);
        assertThat(unknown.err()).contains("no column for price");
        assertThat(told.code()).isEqualTo(ExitCode.OK);
        assertThat(told.out()).contains("as you told", "Would import 1 listing(s); 1 row(s) left out", "Bemerkung",
                "not used", "210,000 kilometres", "'abc' is no amount of money");
        assertThat(remembered.out()).contains("remembered of an earlier table");
        assertThat(Files.readString(folder.resolve("settings/columns.csv"))).contains("price,Gebot");
    }

    @Test
    void bad_rows_are_written_for_mending_and_cannot_run_a_formula() throws IOException {
        Path bad = folder.resolve("bad.csv");

        Run run = Run.of("lot", "check", file("a.csv", TABLE), "--column", "price=Gebot", "--bad-rows", bad.toString());

        assertThat(run.code()).isEqualTo(ExitCode.SOME_ROWS_REFUSED);
        try (var parser = CSVFormat.RFC4180.builder().setHeader().setSkipHeaderRecord(true).get()
                .parse(new StringReader(Files.readString(bad)))) {
            CSVRecord row = parser.getRecords().get(0);
            assertThat(row.get("Gebot")).isEqualTo("abc");
            assertThat(row.get("Bemerkung")).isEqualTo("'=1+1");
            assertThat(row.get("reason")).contains("row 3, Gebot", "no amount of money");
        }
        Files.writeString(bad, Files.readString(bad).replace("abc", "900"));
        assertThat(Run.of("lot", "check", bad.toString()).code()).isEqualTo(ExitCode.OK);
    }

    @Test
    void wrong_encodings_are_read() throws IOException {
        String text = "id,year,make,model,odometer,price,story\n1,2012,ford,focus,90000,1500,L\u00e4uft nicht\n";
        for (var charset : java.util.List.of(StandardCharsets.UTF_16LE, StandardCharsets.ISO_8859_1,
                StandardCharsets.UTF_8)) {
            Path table = Files.write(folder.resolve("e.csv"), text.getBytes(charset));

            assertThat(Run.of("lot", "preview", table.toString()).out()).as(charset.toString())
                    .contains("Would import 1 listing(s)");
        }
    }

    @Test
    void a_scan_report_is_read_code_by_code() throws IOException {
        Run run = Run.of("codes", file("scan.txt", "Stored\nP0016\nP1326\n\nPending\nP0300\n"));

        assertThat(run.code()).isEqualTo(ExitCode.OK);
        assertThat(run.out()).contains("present: CODE_CAM_CRANK", "unsure: CODE_MISFIRE",
                "not used: the maker's own code", "3 code(s) read, 2 used");
        assertThat(Run.of("codes", file("none.txt", "all fine")).code()).isEqualTo(ExitCode.FILE_UNUSABLE);
    }

    @Test
    void codes_read_out_weigh_in_the_judgement() throws IOException {
        String table = file("t.csv", "id,year,make,model,odometer,price\n1,2012,ford,focus,90000,1500\n");

        Run without = Run.of("judge", table);
        Run with = Run.of("judge", table, "--codes", "P0016 P1326");

        assertThat(with.code()).as(with.err()).isEqualTo(ExitCode.OK);
        assertThat(with.err()).contains("CODE_CAM_CRANK", "the maker's own code");
        assertThat(with.out()).isNotEqualTo(without.out()).contains("iming chain");
        assertThat(Run.of("judge", table, "--codes", "nothing").code()).isEqualTo(ExitCode.USAGE);
    }

    @Test
    void a_folder_of_adverts_gives_one_ranking_and_tells_what_cannot_be_read() throws IOException {
        Path adverts = Files.createDirectory(folder.resolve("adverts"));
        Files.writeString(adverts.resolve("a.txt"), "2014 Honda Civic LX, 98k, no start, $2,600\n---\n"
                + "2011 Ford Escape XLT 140k miles overheats, $1,500 obo");
        Files.writeString(adverts.resolve("b.html"), "<html><body><p>2012 Toyota Corolla LE, 120k mi, $2,900</p></body>");
        Files.writeString(adverts.resolve("c.txt"), "garden chair, hardly used");
        Files.write(adverts.resolve("d.png"), new byte[] {1, 2, 3});

        Run run = Run.of("advert", "--today", "2026-01-15", adverts.toString());

        assertThat(run.code()).as(run.err()).isEqualTo(ExitCode.SOME_ROWS_REFUSED);
        assertThat(run.out()).contains("advert1: a.txt, advert 1", "advert2: a.txt, advert 2", "advert3: b.html");
        assertThat(run.err()).contains("c.txt: no make or model", "d.png: a file ending in .png is no saved advert");
    }
}
