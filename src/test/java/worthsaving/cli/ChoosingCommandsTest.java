package worthsaving.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Choosing, mixed orders and places through the command line; cars invented. */
class ChoosingCommandsTest {

    private static final String LOT = """
            id,year,make,model,odometer,price,currency,title,present
            A1,2014,honda,civic,98000,2400,USD,clean,NO_CRANK
            A2,2015,honda,civic,88000,2500,USD,clean,NO_CRANK
            A3,2013,honda,accord,99000,29000,USD,clean,NO_CRANK
            """;

    @TempDir
    private Path folder;
    private String lot;

    @BeforeEach
    void write() throws IOException {
        lot = Files.writeString(folder.resolve("lot.csv"), LOT).toString();
    }

    @Test
    void chooses_under_limits_and_says_why_not_the_others() {
        Run run = Run.of("choose", lot, "--today", "2026-01-15", "--cash", "7000", "--bays", "1", "--hours", "80");

        assertThat(run.code()).isEqualTo(ExitCode.OK);
        assertThat(run.out()).contains("Buy together:", "bays 1 of 1", "Left out:", "2 of 1 bays", "not worth it",
                "worst 5 %", "not appraisal");
    }

    @Test
    void csv_and_json_hold_the_same_choice() throws IOException {
        String[] limits = {"--today", "2026-01-15", "--bays", "1"};
        List<String> csv = Run.of("choose", lot, "--csv", limits[0], limits[1], limits[2], limits[3]).out().lines()
                .toList();
        JsonNode json = new ObjectMapper()
                .readTree(Run.of("choose", lot, "--json", limits[0], limits[1], limits[2], limits[3]).out());

        assertThat(csv).hasSize(4);
        assertThat(json.at("/chosen")).hasSize(1);
        assertThat(csv.get(1)).startsWith("\"" + json.at("/chosen/0/id").asText() + "\"").contains("\"yes\"");
        assertThat(json.at("/left_out")).hasSize(2);
        assertThat(json.at("/left_out/0/reasons/0").asText()).isEqualTo("bays");
        assertThat(json.at("/cash_limit").isNull()).isTrue();
        assertThat(json.at("/expected_profit").asDouble()).isPositive();
    }

    @ParameterizedTest
    @CsvSource({"--cash, -1", "--hours, -3", "--bays, -1", "--market, -0.1", "--market, NaN"})
    void limits_below_zero_are_usage_errors(String option, String value) {
        assertThat(Run.of("choose", lot, option, value).code()).isEqualTo(ExitCode.USAGE);
    }

    @Test
    void a_mix_orders_the_lot_and_needs_weights_that_can_be_read() {
        Run mixed = Run.of("rank", lot, "--csv", "--today", "2026-01-15", "--order", "mix", "--weights",
                "profit=1,loss=2");

        assertThat(mixed.code()).isEqualTo(ExitCode.OK);
        assertThat(mixed.out().lines().count()).isEqualTo(4);
        assertThat(Run.of("rank", lot, "--order", "mix").err()).contains("--order mix needs --weights");
        assertThat(Run.of("rank", lot, "--order", "room", "--weights", "profit=1").code()).isEqualTo(ExitCode.USAGE);
        assertThat(Run.of("rank", lot, "--weights", "luck=1").err()).contains("'luck=1' is no weight");
        assertThat(Run.of("rank", lot, "--order", "luck").err()).contains("expected_profit", "mix");
    }

    @Test
    void a_place_changes_the_terms_and_says_that_it_is_an_example() {
        Run untaxed = Run.of("rank", lot, "--csv", "--today", "2026-01-15", "--place", "us_no_sales_tax");
        Run usual = Run.of("rank", lot, "--csv", "--today", "2026-01-15");

        assertThat(untaxed.err()).contains("Example", "check your local rules");
        assertThat(untaxed.out()).isNotEqualTo(usual.out());
        assertThat(Run.of("choose", lot, "--place", "atlantis").err()).contains("no place 'atlantis'", "us_texas");
        assertThat(Run.of("judge", lot, "--place", "us_auction").code()).isEqualTo(ExitCode.OK);
    }
}
