package worthsaving.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The owner's and the mechanic's commands; the car is invented. */
class OwnerCommandsTest {

    private static final String CAR = """
            id,year,make,model,odometer,price,currency,title,present,quote
            A1,2014,honda,civic,98000,900,USD,clean,NO_CRANK CRANK_LOCKED,5600
            A2,2014,honda,civic,98000,900,USD,clean,NO_CRANK,
            """;

    @TempDir
    private Path folder;
    private String lot;

    @BeforeEach
    void write() throws IOException {
        lot = Files.writeString(folder.resolve("lot.csv"), CAR).toString();
    }

    private static JsonNode json(String... args) throws IOException {
        return new ObjectMapper().readTree(Run.of(args).out());
    }

    @Test
    void rescue_compares_all_ways_over_years_and_miles() {
        Run run = Run.of("rescue", lot, "--today", "2026-01-15", "--years", "4", "--miles-per-year", "9000");

        assertThat(run.code()).isEqualTo(ExitCode.OK);
        assertThat(run.out()).contains("kept 4 years and 36,000 miles", "pay the quote", "independent shop",
                "own hands", "a single quote is apt to grow", "a rule of thumb scraps above",
                "buy a like car", "Break-even quote", "quoted 5,600", "Assumed:", "(guess)", "not appraisal");
    }

    @Test
    void rescue_puts_what_rules_the_car_out_above_all_sums() throws IOException {
        String lost = Files.writeString(folder.resolve("lost.csv"), CAR.replace("clean,NO_CRANK,", "lost,NO_CRANK,"))
                .toString();

        String text = Run.of("rescue", lost, "--id", "A2").out();

        assertThat(text.indexOf("STOP: the title is lost")).isPositive().isLessThan(text.indexOf("Cheapest:"));
        assertThat(json("rescue", lost, "--id", "A2", "--json").get("hard_stop").asText()).startsWith("the title is lost");
        assertThat(json("rescue", lost, "--id", "A1", "--json").get("hard_stop").isNull()).isTrue();
    }

    @Test
    void rescue_takes_the_quote_of_the_row_unless_another_is_given() throws IOException {
        String[] base = {"rescue", lot, "--json", "--today", "2026-01-15"};

        assertThat(json(base).at("/quote").asDouble()).isEqualTo(5_600);
        assertThat(json("rescue", lot, "--json", "--today", "2026-01-15", "--quote", "4000").at("/quote").asDouble())
                .isEqualTo(4_000);
        JsonNode none = json("rescue", lot, "--json", "--today", "2026-01-15", "--id", "A2");
        assertThat(none.at("/quote").isNull()).isTrue();
        assertThat(none.at("/ways/0/way").asText()).isEqualTo("independent shop");
        JsonNode way = json(base).at("/ways/0");
        assertThat(way.at("/net_cost").asDouble()).isCloseTo(way.at("/upfront").asDouble()
                + way.at("/expected_repeat").asDouble() + way.at("/other_repairs").asDouble()
                + way.at("/running").asDouble() - way.at("/end_value").asDouble(), within(0.03));
    }

    @Test
    void rescue_csv_has_a_row_for_each_way_and_another_car_can_be_named() {
        String csv = Run.of("rescue", lot, "--csv", "--today", "2026-01-15", "--other-price", "12500", "--other-year",
                "2020",
                "--other-miles", "40000", "--other-running", "120").out();

        assertThat(csv.lines().findFirst().orElseThrow()).contains("per_mile");
        assertThat(csv).contains("buy the other car").doesNotContain("buy a like car");
    }

    @ParameterizedTest
    @CsvSource({"--years, 0", "--miles-per-year, 0", "--quote, -1", "--unknown-faults, 2", "--other-price, 9000"})
    void rescue_refuses_nonsense(String option, String value) {
        assertThat(Run.of("rescue", lot, option, value).code()).isEqualTo(ExitCode.USAGE);
    }

    @Test
    void a_quote_shows_stages_limits_and_when_to_call() {
        Run run = Run.of("quote", lot, "--today", "2026-01-15", "--rate", "120");

        assertThat(run.code()).isEqualTo(ExitCode.OK);
        assertThat(run.out()).contains("at 120 USD an hour", "access", "with 80 %", "with 95 %", "Ceiling",
                "Call the owner", "Cautions", "not appraisal");
        assertThat(Run.of("quote", lot, "--csv", "--today", "2026-01-15").out()).startsWith("\"stage\"");
    }

    @Test
    void a_quotes_ceiling_and_limits_agree_in_json() throws IOException {
        JsonNode quote = json("quote", lot, "--json", "--today", "2026-01-15", "--ceiling", "3000");

        assertThat(quote.at("/ceiling").asDouble()).isEqualTo(3_000);
        assertThat(quote.at("/not_exceeded_80").asDouble()).isLessThan(quote.at("/not_exceeded_95").asDouble());
        assertThat(quote.at("/lines").size()).isGreaterThan(2);
        assertThat(Run.of("quote", lot, "--rate", "0").code()).isEqualTo(ExitCode.USAGE);
        assertThat(Run.of("quote", lot, "--id", "nobody").code()).isEqualTo(ExitCode.USAGE);
    }

    @Test
    void judge_weighs_what_lies_open() throws IOException {
        String gasket = Files.writeString(folder.resolve("g.csv"), CAR.replace("NO_CRANK CRANK_LOCKED,5600",
                "OVERHEATS WHITE_SMOKE_SWEET USES_COOLANT MILKY_OIL,")).toString();
        Run run = Run.of("judge", gasket, "--today", "2026-01-15", "--keep-years", "5");

        assertThat(run.out()).contains("While you are in there (kept 5.0 years", "pays above");
        assertThat(json("judge", gasket, "--json", "--today", "2026-01-15").at("/while_in_there").isArray()).isTrue();
        assertThat(Run.of("judge", gasket, "--keep-years", "0").code()).isEqualTo(ExitCode.USAGE);
    }
}
