package worthsaving.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The main job through the command line, with good and with bad input; cars invented. */
class JudgingCommandsTest {

    private static final String HEADER = "id,year,make,model,odometer,price,currency,title,present,story\n";
    private static final String GOOD = "A1,2014,honda,civic,98000,2600,USD,clean,NO_CRANK,just clicks\n";

    @TempDir
    private Path folder;

    private String file(String text) throws IOException {
        return file(text, StandardCharsets.UTF_8);
    }

    private String file(String text, Charset encoding) throws IOException {
        return Files.write(folder.resolve("lot.csv"), text.getBytes(encoding)).toString();
    }

    @Test
    void ranks_good_rows_and_names_bad_ones_by_row_and_column() throws IOException {
        Run run = Run.of("rank", "--today", "2026-01-15", "--csv", file(HEADER
                + GOOD
                + "A2,2013,ford,focus,abc,1500,USD,clean,NO_CRANK,odometer is a word\n"
                + "A3,2013,ford,focus,90000,-5,USD,clean,NO_CRANK,price below zero\n"
                + "A4,2013,zeppelin,airship,90000,1500,USD,clean,NO_CRANK,no such make\n"
                + GOOD));

        assertThat(run.code()).isEqualTo(ExitCode.SOME_ROWS_REFUSED);
        assertThat(run.out().lines().skip(1).map(l -> l.split(",")[1])).containsExactlyInAnyOrder("\"A1\"", "\"A4\"");
        assertThat(run.err()).contains("row 3", "odometer", "abc").contains("row 4", "price", "-5")
                .contains("row 5", "zeppelin").contains("row 6");
    }

    /** What lets an engine split a table among processes: no line depends on another, nor on how many cores there are. */
    @Test
    void scores_of_the_parts_joined_are_the_scores_of_the_whole() throws IOException {
        List<String> lot = Files.readAllLines(Path.of("shared/samples/lot.csv")).stream()
                .filter(l -> !l.startsWith("#")).toList();
        int half = lot.size() / 2;
        String first = String.join("\n", lot.subList(0, half)) + "\n";
        String second = lot.get(0) + "\n" + String.join("\n", lot.subList(half, lot.size())) + "\n";
        Run whole = Run.of("score", "--today", "2026-01-15", "shared/samples/lot.csv");
        Run a = Run.of("score", "--today", "2026-01-15", "--threads", "1", file(first));
        Run b = Run.of("score", "--today", "2026-01-15", "--threads", "2", file(second));

        assertThat(whole.out().lines()).hasSameSizeAs(lot);
        assertThat(a.out() + b.out().substring(b.out().indexOf('\n') + 1)).isEqualTo(whole.out());
        assertThat(whole.out().lines().skip(1).map(l -> l.substring(1, 4))).isSorted();
    }

    @Test
    void a_listing_that_cannot_be_judged_has_a_scored_line_with_the_reason() throws IOException {
        Run run = Run.of("score", "--today", "2026-01-15", file("id,year,make,model,odometer,price,present\n"
                + "A1,,honda,civic,98000,2600,NO_CRANK\nA2,2014,honda,civic,abc,2600,NO_CRANK\n"
                + "A3,2014,honda,civic,98000,2600,NO_CRANK\n"));

        assertThat(run.code()).isEqualTo(ExitCode.SOME_ROWS_REFUSED);
        assertThat(run.err()).contains("abc");
        assertThat(run.out().lines().map(l -> l.split(",")[0])).containsExactly("\"id\"", "\"A1\"", "\"A3\"");
        assertThat(run.out().lines().findFirst().orElseThrow()).endsWith("\"not_judged_because\",\"mend\"");
    }

    @Test
    void scoring_needs_a_core() {
        Run run = Run.of("score", "--threads", "0", "shared/samples/lot.csv");

        assertThat(run.code()).isEqualTo(ExitCode.USAGE);
        assertThat(run.err()).contains("--threads must be at least 1");
    }

    @ParameterizedTest
    @CsvSource({"shared/samples/bad/empty.csv", "shared/samples/bad/wrong_header.csv", "no/such/file.csv"})
    void a_file_that_is_no_lot_gives_code_3_and_no_result(String path) {
        Run run = Run.of("rank", path);

        assertThat(run.code()).isEqualTo(ExitCode.FILE_UNUSABLE);
        assertThat(run.out()).isEmpty();
        assertThat(run.err()).contains(path.substring(path.lastIndexOf('/') + 1)).doesNotContain("Exception");
    }

    @Test
    void reads_other_encodings() throws IOException {
        Run run = Run.of("rank", "--csv", "--today", "2026-01-15",
                file(HEADER + GOOD.replace("just clicks", "caf\u00e9 owner"), Charset.forName("windows-1252")));

        assertThat(run.out().lines().count()).isEqualTo(2);
    }

    @Test
    void stops_reading_at_the_limit_and_says_so() throws IOException {
        Run run = Run.of("rank", "--csv", "--today", "2026-01-15", "--most", "1",
                file(HEADER + GOOD + GOOD.replace("A1", "A2").replace("98000", "99000")));

        assertThat(run.code()).isEqualTo(ExitCode.SOME_ROWS_REFUSED);
        assertThat(run.out().lines().count()).isEqualTo(2);
        assertThat(run.err()).contains("Only the first 1 listings were read");
    }

    @Test
    void the_same_seed_gives_the_same_bytes_and_another_one_other_bytes() throws IOException {
        String lot = file(HEADER + GOOD);
        String once = Run.of("rank", "--json", "--today", "2026-01-15", "--seed", "7", lot).out();

        assertThat(Run.of("rank", "--json", "--today", "2026-01-15", "--seed", "7", lot).out()).isEqualTo(once);
        assertThat(Run.of("rank", "--json", "--today", "2026-01-15", "--seed", "8", lot).out()).isNotEqualTo(once);
    }

    @Test
    void judge_and_rank_agree_to_the_cent() throws IOException {
        String lot = file(HEADER + GOOD);
        String ranked = Run.of("rank", "--json", "--today", "2026-01-15", lot).out();
        String judged = Run.of("judge", "--json", "--today", "2026-01-15", lot).out();

        double most = number(ranked, "most_to_pay");
        assertThat(most).isPositive();
        assertThat(number(judged, "most_to_pay")).isCloseTo(most, org.assertj.core.api.Assertions.within(0.005));
        assertThat(number(judged, "value_running"))
                .isCloseTo(number(ranked, "value_running"), org.assertj.core.api.Assertions.within(0.005));
    }

    @Test
    void a_higher_target_allows_a_lower_price() throws IOException {
        String lot = file(HEADER + GOOD);
        double modest = number(Run.of("rank", "--json", "--today", "2026-01-15", "--target-profit", "500", lot).out(),
                "most_to_pay");
        double bold = number(Run.of("rank", "--json", "--today", "2026-01-15", "--target-profit", "2500", lot).out(),
                "most_to_pay");

        assertThat(bold).isLessThan(modest);
    }

    @Test
    void judge_shows_everything_the_verdict_rests_on() throws IOException {
        Run run = Run.of("judge", "--today", "2026-01-15", file(HEADER + GOOD));

        assertThat(run.code()).isEqualTo(ExitCode.OK);
        assertThat(run.out()).contains("Worth running", "What may have failed", "Repair of what is likelier",
                "Ways out", "Checks worth making before paying", "not appraisal");
    }

    @Test
    void explain_names_findings_and_adds_up_the_value() throws IOException {
        Run run = Run.of("explain", "--today", "2026-01-15", file(HEADER + GOOD));

        assertThat(run.out()).contains("Does not crank", "price index", "mileage", "Most probable stories");
    }

    @Test
    void an_unknown_listing_and_a_bad_option_are_usage_errors() throws IOException {
        String lot = file(HEADER + GOOD);

        assertThat(Run.of("judge", "--id", "nobody", lot).code()).isEqualTo(ExitCode.USAGE);
        assertThat(Run.of("rank", "--chance-of-loss", "3", lot).code()).isEqualTo(ExitCode.USAGE);
        assertThat(Run.of("rank", "--model", "no.json", lot).code()).isEqualTo(ExitCode.INSTALLATION_FAULTY);
    }

    @Test
    void a_damaged_model_is_refused() throws IOException {
        Path model = Files.writeString(folder.resolve("bad.json"), "{\"format\": 1");
        Run run = Run.of("rank", "--model", model.toString(), file(HEADER + GOOD));

        assertThat(run.code()).isEqualTo(ExitCode.INSTALLATION_FAULTY);
        assertThat(run.err()).contains("bad.json").doesNotContain("Exception");
    }

    @Test
    void fit_refuses_too_few_rows_and_unknown_shapes() throws IOException {
        String table = file("Price,Mileage\n");

        assertThat(Run.of("fit", table, "nonsense", folder.resolve("m.json").toString()).code())
                .isEqualTo(ExitCode.USAGE);
        assertThat(Run.of("fit", table, "us_cars_2005", folder.resolve("m.json").toString()).code())
                .isEqualTo(ExitCode.FILE_UNUSABLE);
        assertThat(Files.exists(folder.resolve("m.json"))).isFalse();
    }

    @Test
    void data_reports_on_a_shipped_set() {
        Run run = Run.of("data", "datasets/us_cars_2005.csv", "us_cars_2005");

        assertThat(run.code()).isEqualTo(ExitCode.OK);
        assertThat(run.out()).contains("804 rows read", "repeated advert");
    }

    @Test
    void a_changed_catalogue_shows_what_it_changes_in_a_lot() throws IOException {
        Path other = Files.createDirectory(folder.resolve("other"));
        Path shipped = Path.of("shared/catalogue");
        for (String name : worthsaving.catalog.CatalogueReader.FILES) {
            String text = Files.readString(shipped.resolve(name));
            Files.writeString(other.resolve(name), name.equals("money.csv")
                    ? text.replace(",0,6,9.5,PERCENT", ",9,9.2,9.5,PERCENT")
                    : text);
        }
        String lot = file(HEADER + GOOD);
        Run run = Run.of("catalogue", "diff", shipped.toString(), other.toString(), "--lot", lot, "--today", "2026-01-15");

        assertThat(run.code()).isEqualTo(ExitCode.OK);
        assertThat(run.out()).contains("money.csv sales_tax: figure", "1 difference(s)", "A1",
                "0 listing(s) the same");
        assertThat(Run.of("catalogue", "diff", shipped.toString(), shipped.toString()).out()).contains("0 difference(s)");
    }

    @Test
    void an_advert_is_read_shown_with_its_words_and_judged() throws IOException {
        String advert = file("2014 Honda Civic LX, 98k miles, wont crank just clicks. clean title. $2,600 obo. "
                + "call 555 555 0123");
        Run run = Run.of("advert", "--today", "2026-01-15", advert);

        assertThat(run.code()).isEqualTo(ExitCode.OK);
        assertThat(run.out()).contains("98,000 miles", "'98k miles'", "USD 2600.00", "Worth running", "Ways out")
                .doesNotContain("0123");
        assertThat(Run.of("advert", "--read-only", advert).out()).contains("98,000 miles").doesNotContain("Worth running");
    }

    private static double number(String json, String field) {
        List<String> lines = json.lines().filter(l -> l.contains("\"" + field + "\"")).toList();
        return Double.parseDouble(lines.get(0).replaceAll("[^0-9.\\-]", "").replaceAll("^-*", ""));
    }
}
