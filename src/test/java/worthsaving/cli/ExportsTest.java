package worthsaving.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import com.networknt.schema.JsonSchemaFactory;
import com.networknt.schema.SpecVersion;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What is handed on: its schema, its forms, and what stays behind. Cars invented. */
class ExportsTest {

    /** The number commonly worked through for the check digit of 49 CFR 565.15. */
    private static final String VIN = "1M8GDM9AXKP042788";
    private static final Path SCHEMAS = Path.of("shared", "schema");
    private static final ObjectMapper JSON = new ObjectMapper();

    @TempDir
    private Path folder;
    private String lot;

    @BeforeEach
    void write() throws IOException {
        lot = Files.writeString(folder.resolve("lot.csv"), """
                id,year,make,model,odometer,price,currency,title,present,quote,vin
                =A1,2014,honda,civic,98000,900,USD,clean,NO_CRANK CRANK_LOCKED,5600,%s
                %s,2013,ford,focus,120000,,USD,clean,OVERHEATS MILKY_OIL,,%s
                A3,,honda,civic,,900,USD,clean,NO_CRANK,,
                """.formatted(VIN, VIN.replace('7', '6'), VIN.replace('7', '6'))).toString();
    }

    private Run run(String command, String... more) {
        List<String> args = new ArrayList<>(List.of(command, lot, "--today", "2026-01-15"));
        args.addAll(List.of(more));
        return Run.of(args.toArray(String[]::new));
    }

    @ParameterizedTest
    @CsvSource({"rank, lot", "judge, case", "quote, quote", "rescue, rescue", "choose, choice"})
    void json_is_what_its_schema_says_and_nothing_more(String command, String schema) throws IOException {
        JsonNode described = JSON.readTree(SCHEMAS.resolve(schema + ".schema.json").toFile());
        JsonNode output = JSON.readTree(run(command, "--json").out());
        JsonNode withVin = JSON.readTree(run(command, "--json", "--with-vin").out());

        assertThat(faults(described, output)).isEmpty();
        closeAll(described);
        assertThat(faults(described, output)).isEmpty();
        assertThat(faults(described, withVin)).isEmpty();
        assertThat(output.at("/format").asText()).isEqualTo("worthsaving/" + schema);
    }

    /** Every kind of entry, a photo, a forecast and an end, so that every property is met. */
    @ParameterizedTest
    @CsvSource({"list, casebook", "show, casebook-case"})
    void json_of_a_casebook_is_what_its_schema_says_and_nothing_more(String command, String schema) throws IOException {
        Path file = folder.resolve("casebook.db");
        Books.worked(file, lot);
        List<String> args = new ArrayList<>(List.of("casebook", command, "--casebook", file.toString(), "--json"));
        if (command.equals("show")) {
            args.add("=A1");
        }
        described(schema, Run.of(args.toArray(String[]::new)));
    }

    @Test
    void json_of_a_teardown_is_what_its_schema_says_and_nothing_more() throws IOException {
        described("teardown", Run.of("teardown", "shared/samples/lot.csv", "--id", "L01", "--journal",
                "shared/samples/teardown_L01.csv", "--ceiling", "6000", "--today", "2026-01-15", "--json"));
    }

    private static void described(String schema, Run run) throws IOException {
        assertThat(run.code()).as(run.err()).isZero();
        JsonNode described = JSON.readTree(SCHEMAS.resolve(schema + ".schema.json").toFile());
        JsonNode output = JSON.readTree(run.out());
        assertThat(faults(described, output)).isEmpty();
        closeAll(described);
        assertThat(faults(described, output)).isEmpty();
        assertThat(output.at("/format").asText()).isEqualTo("worthsaving/" + schema);
    }

    /** The validator would notice: each of these is wrong in one place. */
    @Test
    void the_schema_refuses_what_is_wrong() throws IOException {
        JsonNode described = JSON.readTree(SCHEMAS.resolve("case.schema.json").toFile());
        ObjectNode good = (ObjectNode) JSON.readTree(run("judge", "--json").out());

        assertThat(faults(described, good.deepCopy().put("version", 2))).isNotEmpty();
        assertThat(faults(described, good.deepCopy().put("verdict", "perhaps"))).isNotEmpty();
        assertThat(faults(described, good.deepCopy().without("items"))).isNotEmpty();
        assertThat(faults(described, good.deepCopy().put("vin", "short"))).isNotEmpty();
    }

    private static List<String> faults(JsonNode schema, JsonNode output) {
        return JsonSchemaFactory.getInstance(SpecVersion.VersionFlag.V202012).getSchema(schema).validate(output).stream()
                .map(Object::toString).toList();
    }

    /** Makes every object of a schema refuse what it does not describe. */
    private static void closeAll(JsonNode schema) {
        if (schema.isObject() && schema.has("properties")) {
            ((ObjectNode) schema).put("additionalProperties", false);
        }
        schema.forEach(ExportsTest::closeAll);
    }

    @ParameterizedTest
    @CsvSource({
        "rank, --json", "rank, --csv", "rank, --tsv", "rank, --markdown", "judge, --json", "judge, --csv",
        "judge, --tsv", "judge, --markdown", "quote, --json", "quote, --csv", "quote, --tsv", "quote, --markdown",
        "rescue, --json", "rescue, --csv", "rescue, --tsv", "rescue, --markdown", "choose, --json", "choose, --csv",
        "choose, --tsv", "choose, --markdown"
    })
    void no_export_holds_an_identification_number_unless_asked(String command, String form) {
        assertThat(run(command, form).out()).isNotEmpty().doesNotContain(VIN).doesNotContain(VIN.replace('7', '6'));
    }

    @ParameterizedTest
    @CsvSource({"rank, --json", "rank, --csv", "rank, --tsv", "judge, --json", "judge, --csv", "judge, --tsv"})
    void an_export_holds_it_when_asked(String command, String form) {
        assertThat(run(command, form, "--with-vin").out()).contains(VIN);
    }

    @ParameterizedTest
    @CsvSource({"rank, --csv", "rank, --tsv", "rank, --markdown", "judge, --csv", "judge, --tsv", "choose, --csv",
        "choose, --tsv", "choose, --markdown"})
    void an_id_that_is_a_formula_is_neutralised(String command, String form) {
        assertThat(run(command, form).out()).contains("'=A1").doesNotContain("\t=A1").doesNotContain("\"=A1")
                .doesNotContain("| =A1");
    }

    @Test
    void tables_have_as_many_cells_in_every_row_as_in_the_header() {
        for (String command : List.of("rank", "judge", "quote", "rescue", "choose")) {
            List<String> tsv = run(command, "--tsv").out().lines().toList();
            assertThat(tsv).hasSizeGreaterThan(2);
            assertThat(tsv).allMatch(l -> l.split("\t", -1).length == tsv.get(0).split("\t", -1).length);
        }
        List<String> table = run("rank", "--markdown").out().lines().filter(l -> l.startsWith("|")).toList();
        assertThat(table).hasSize(4).allMatch(l -> l.replace("\\|", "").split("\\|", -1).length == 15);
    }

    @ParameterizedTest
    @CsvSource({
        "quote, '# Quote for =A1, 2014 honda civic, at ', ## Call the owner and wait for a yes",
        "rescue, '# \\=A1: 2014 honda civic, kept 3 years and 36,000 miles; USD', ## Assumed:",
        "choose, '# Buy', ## Note"
    })
    void markdown_of_the_other_reports_has_their_heading_parts_and_tables(String command, String heading, String part) {
        String markdown = run(command, "--markdown").out();

        assertThat(markdown).startsWith(heading).contains("\n" + part + "\n", "| --- |", "not appraisal");
        assertThat(run(command).out()).doesNotContain("# ", "| --- |").contains("not appraisal");
        assertThat(run(command, "--markdown", "--csv").code()).isEqualTo(ExitCode.USAGE);
    }

    @Test
    void markdown_of_a_car_is_the_report_with_headings_and_tables() {
        assertThat(run("judge", "--markdown").out()).startsWith("# \\=A1: 2014 honda civic\n")
                .contains("\n## Worth running\n", "\n## Ways out at ", "| --- |", "not appraisal");
        assertThat(run("judge", "--markdown", "--tsv").code()).isEqualTo(ExitCode.USAGE);
    }
}
