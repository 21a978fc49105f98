package worthsaving.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

class MainTest {

    private static final String BAD = "shared/samples/bad/";

    @TempDir
    private Path folder;

    @Test
    void help_and_version_go_to_standard_output() {
        Run help = Run.of("--help");

        assertThat(help.code()).isEqualTo(ExitCode.OK);
        assertThat(help.out()).contains("Exit codes:", "70", "catalogue", "lot", "--seed");
        assertThat(help.err()).isEmpty();
        assertThat(Run.of("--version").out()).startsWith("worthsaving ");
        assertThat(Run.of("lot", "check", "--help").out()).contains("FILE", "--json", "--csv", "--refused", "--seed");
    }

    static Stream<List<String>> wrongUses() {
        return Stream.of(
                List.of(),
                List.of("lot"),
                List.of("lot", "check"),
                List.of("nonsense"),
                List.of("lot", "check", "x.csv", "--json", "--csv"),
                List.of("lot", "check", "shared/samples/lot.csv", "--currency", "shells"),
                List.of("--seed", "abc", "catalogue", "check"));
    }

    @ParameterizedTest
    @MethodSource("wrongUses")
    void wrong_usage_ends_with_2_and_a_reason(List<String> args) {
        Run result = Run.of(args.toArray(String[]::new));

        assertThat(result.code()).isEqualTo(ExitCode.USAGE);
        assertThat(result.out()).isEmpty();
        assertThat(result.err()).isNotBlank().doesNotContain("Exception", "\tat ");
    }

    @Test
    void the_sample_lot_names_only_what_the_catalogue_knows() {
        Run result = Run.of("lot", "check", "shared/samples/lot.csv", "--today", "2026-11-25");

        assertThat(result.out()).startsWith("25 listing(s) read, 0 row(s) left out, 0 warning(s)");
        assertThat(result.code()).isEqualTo(ExitCode.OK);
        assertThat(result.err()).isEmpty();
    }

    @ParameterizedTest
    @CsvSource({
        "figures.csv, 1", "repeats.csv, 1", "cells.csv, 1", "windows_1252.csv, 0", "bom_tabs.tsv, 0", "utf_16.csv, 0",
        "empty.csv, 3", "wrong_header.csv, 3", "no_header.csv, 3", "spreadsheet.csv, 3", "header_only.csv, 0",
        "does_not_exist.csv, 3", "'', 3"
    })
    void ends_with_the_documented_code(String name, int code) {
        Run result = Run.of("lot", "check", BAD + name);

        assertThat(result.code()).isEqualTo(code);
        assertThat(result.out() + result.err()).isNotBlank().doesNotContain("Exception", "\tat ");
    }

    @Test
    void faults_stand_with_row_and_column() {
        assertThat(Run.of("lot", "check", BAD + "figures.csv").out())
                .contains("figures.csv, row 2, column odometer: 'abc' is no odometer reading;")
                .contains("[row left out]")
                .contains("1 listing(s) read, 8 row(s) left out, 0 warning(s)");
    }

    @Test
    void faults_as_json() throws IOException {
        JsonNode json = new ObjectMapper().readTree(Run.of("lot", "check", "--json", BAD + "figures.csv").out());

        assertThat(json.at("/format").asText()).isEqualTo("worthsaving/lot-check");
        assertThat(json.at("/faults")).hasSize(9);
        assertThat(json.at("/faults/1/row").asInt()).isEqualTo(3);
        assertThat(json.at("/faults/1/column").asText()).isEqualTo("price");
        assertThat(json.at("/summary/refused").asInt()).isEqualTo(8);
    }

    @Test
    void faults_as_csv() {
        String csv = Run.of("lot", "check", "--csv", BAD + "figures.csv").out();

        assertThat(csv.lines()).hasSize(10).first().isEqualTo(
                "\"source\",\"row\",\"column\",\"effect\",\"what\",\"mend\"");
        assertThat(csv).contains("\"figures.csv\",3,\"price\",\"ROW_REFUSED\"");
    }

    @Test
    void refused_rows_can_be_written_out_mended_and_read_again() throws IOException {
        Path refused = folder.resolve("refused.csv");
        Run.of("lot", "check", BAD + "figures.csv", "--refused", refused.toString());

        assertThat(refused).content().startsWith("id,year,make,model,odometer,price\nA1,2012,ford,focus,abc,1500\n");
        Files.writeString(refused, Files.readString(refused).lines().limit(2).reduce((a, b) -> a + "\n" + b)
                .orElseThrow().replace("abc", "90000"));
        assertThat(Run.of("lot", "check", refused.toString()).code()).isEqualTo(ExitCode.OK);
    }

    @Test
    void never_overwrites_the_table_it_reads() throws IOException {
        Path table = Files.writeString(folder.resolve("t.csv"), "year,make,model,odometer,price\n");
        Run result = Run.of("lot", "check", table.toString(), "--refused", table.toString());

        assertThat(result.code()).isEqualTo(ExitCode.USAGE);
        assertThat(table).content().isEqualTo("year,make,model,odometer,price\n");
    }

    @Test
    void the_projects_catalogue_has_no_fault() {
        Run result = Run.of("catalogue", "check");

        assertThat(result.out()).startsWith("No fault: ").contains("failure items", "findings");
        assertThat(result.code()).isEqualTo(ExitCode.OK);
    }

    @Test
    void faults_of_a_catalogue_are_listed_and_end_with_4() throws IOException {
        try (Stream<Path> files = Files.list(Path.of("shared/catalogue"))) {
            for (Path file : files.filter(f -> f.toString().endsWith(".csv")).toList()) {
                String text = Files.readString(file);
                Files.writeString(folder.resolve(file.getFileName()),
                        file.endsWith("tools.csv") ? text.replaceFirst("\n([A-Z]\\w+),", "\n$1_GONE,") : text);
            }
        }
        Run result = Run.of("catalogue", "check", folder.toString());

        assertThat(result.code()).isEqualTo(ExitCode.INSTALLATION_FAULTY);
        assertThat(result.out()).contains(".csv, line ").contains("fault(s)");
        assertThat(Run.of("catalogue", "check", folder.resolve("nowhere").toString()).code())
                .isEqualTo(ExitCode.FILE_UNUSABLE);
        assertThat(Run.of("catalogue", "check", "--json", folder.toString()).out()).contains("\"faults\" : [");
    }
}
