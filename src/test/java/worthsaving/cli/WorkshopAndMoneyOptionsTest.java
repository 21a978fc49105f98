package worthsaving.cli;

import static org.assertj.core.api.Assertions.assertThat;

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

/** Who works, where parts come from, money lines and the buyer's rule through the command line; cars invented. */
class WorkshopAndMoneyOptionsTest {

    @TempDir
    private Path folder;
    private String lot;

    @BeforeEach
    void write() throws IOException {
        lot = Files.writeString(folder.resolve("lot.csv"), "id,year,make,model,odometer,price,currency,title,present\n"
                + "A1,2014,honda,civic,98000,2600,USD,clean,NO_CRANK\n").toString();
    }

    private Run judge(String... options) {
        List<String> all = new ArrayList<>(List.of("judge", "--today", "2026-01-15"));
        all.addAll(List.of(options));
        all.add(lot);
        return Run.of(all.toArray(String[]::new));
    }

    private double most(String... options) {
        List<String> all = new ArrayList<>(List.of(options));
        all.add("--json");
        String json = judge(all.toArray(String[]::new)).out();
        int at = json.indexOf("\"most_to_pay\"");
        return Double.parseDouble(json.substring(json.indexOf(':', at) + 1, json.indexOf(',', at)).trim());
    }

    @Test
    void a_part_on_the_shelf_costs_nothing_and_is_shown() {
        Run usual = judge("--part", "BATT_12V=maker");
        Run shelf = judge("--on-shelf", "BATT_12V");

        assertThat(usual.out()).contains("12 V battery dead/failed (maker)");
        assertThat(shelf.out()).contains("12 V battery dead/failed (on the shelf)").contains("taken");
        assertThat(most("--on-shelf", "BATT_12V")).isGreaterThan(most("--part", "BATT_12V=maker"));
    }

    @Test
    void only_some_sources_and_who_works() {
        Run run = judge("--parts-from", "maker");
        assertThat(run.out()).contains("(maker)", "not allowed").doesNotContain("(used)");
        assertThat(most("--parts-from", "maker")).isLessThan(most());
        assertThat(most("--worker", "dealer")).isLessThan(most("--worker", "independent"));
        assertThat(most("--worker", "independent")).isLessThan(most());
        assertThat(most("--speed", "1.5", "--first-time", "1.4")).isLessThan(most("--speed", "1.5"));
    }

    @Test
    void any_money_line_and_the_buyers_rule() {
        assertThat(most("--money", "sales_tax=9.5")).isLessThan(most("--money", "sales_tax=0"));
        assertThat(most("--money", "title_transfer=300:400:500")).isLessThan(most());
        assertThat(most("--place", "us_trade_sale")).isLessThan(most());
        assertThat(most("--per-hour", "400")).isLessThan(most());
        double calm = most("--chance-of-loss", "1", "--risk-tolerance", "1000000");
        assertThat(most("--chance-of-loss", "1", "--risk-tolerance", "2000")).isLessThan(calm - 100);
        assertThat(judge("--risk-tolerance", "5000").out()).contains("sure", "a risk tolerance of 5,000");
    }

    @Test
    void ones_own_value_goes_before_the_price_model() {
        assertThat(judge("--value-between", "6000:9000").out()).contains("80 % between 6,000 and 9,000");
        assertThat(most("--value-between", "6000:9000")).isGreaterThan(most("--value-between", "4000:6000"));
    }

    @Test
    void the_ways_out_show_quantiles_cash_and_a_rule_of_thumb() {
        assertThat(judge().out()).contains("10 %", "middle", "90 %", "per hour", "at worst", "told in three cases",
                "Rule of thumb", "saved", "again in a year");
        assertThat(judge("--json").out()).contains("profit_p50", "cash_out_p95", "opening_offer", "break_even",
                "would_change", "part_source");
    }

    @Test
    void the_money_lines_are_listed_with_the_users_own_marked() {
        Run run = Run.of("money", "--csv", "--money", "haggle=4:5:6", "--place", "us_auction");

        assertThat(run.code()).isEqualTo(ExitCode.OK);
        assertThat(run.out().lines().filter(l -> l.contains("haggle"))).singleElement().asString()
                .contains(",4,5,6,", "user");
        assertThat(run.err()).contains("check your local rules");
        assertThat(Run.of("money").out()).contains("core charge", "single_quote_margin");
    }

    @ParameterizedTest
    @CsvSource({"--part, NOPE=maker, no 'NOPE'", "--part, BATT_12V=moon, no source of parts",
        "--parts-from, moon, no source of parts", "--on-shelf, NOPE, no 'NOPE'", "--own-tools, NOPE, no 'NOPE'",
        "--money, nope=1, no money line", "--money, sales_tax=x, neither a figure", "--money, sales_tax=-1, sales_tax",
        "--money, haggle=3:2:1, low <= mode", "--ways, swim, no way out", "--risk-tolerance, 0, above zero",
        "--place, moon, no place", "--value-between, 9000, two figures", "--value-between, 9:4, two figures",
        "--speed, 0, above 0"})
    void what_cannot_be_meant_is_refused_with_the_mend(String option, String value, String message) {
        Run run = judge(option, value);

        assertThat(run.code()).isEqualTo(ExitCode.USAGE);
        assertThat(run.out()).isEmpty();
        assertThat(run.err()).contains(message).doesNotContain("Exception");
    }

    @Test
    void a_shop_has_no_speed_of_ones_own() {
        Run run = judge("--worker", "independent", "--speed", "1.2");

        assertThat(run.code()).isEqualTo(ExitCode.USAGE);
        assertThat(run.err()).contains("book hours");
    }
}
