package worthsaving.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What the commands say of a value: reasons in money, comparables, cars like it, currency and units; cars invented. */
class ValueCommandsTest {

    private static final String LOT = "shared/samples/lot.csv";
    private static final String OWN = "shared/samples/comparables.csv";
    private static final String GERMAN = "id,year,make,model,body,odometer,price,title\n"
            + "G1,2009,Volkswagen,Golf,Limousine,120000,3200,clean\n";

    @TempDir
    private Path folder;

    private String file(String name, String text) throws IOException {
        return Files.writeString(folder.resolve(name), text).toString();
    }

    private static double money(String line) {
        Matcher last = Pattern.compile("([+-]?[\\d,]+)\\s*$").matcher(line);
        assertThat(last.find()).as(line).isTrue();
        return Double.parseDouble(last.group(1).replace(",", ""));
    }

    @Test
    void contributions_lead_from_the_typical_car_to_this_one_in_money() {
        List<String> lines = Run.of("explain", LOT, "--today", "2026-01-15").out().lines().toList();
        int from = lines.indexOf(lines.stream().filter(l -> l.startsWith("a typical car ")).findFirst().orElseThrow());
        int to = lines.indexOf(lines.stream().filter(l -> l.startsWith("this car, median ")).findFirst().orElseThrow());
        double sum = lines.subList(from, to).stream().mapToDouble(ValueCommandsTest::money).sum();

        assertThat(to - from).isGreaterThan(4);
        assertThat(sum).as("rounded to whole units, half a unit a line")
                .isCloseTo(money(lines.get(to)), within(0.5 * (to - from + 1)));
        assertThat(lines).anyMatch(l -> l.startsWith("A typical car here: ") && l.contains("miles"));
    }

    @Test
    void comparables_move_the_value_and_each_row_says_by_how_much() {
        Run plain = Run.of("judge", "--json", LOT, "--today", "2026-01-15");
        Run moved = Run.of("judge", "--json", LOT, "--today", "2026-01-15", "--comparables", OWN);
        Run told = Run.of("explain", LOT, "--today", "2026-01-15", "--comparables", OWN);

        assertThat(number(moved.out(), "value_running")).isGreaterThan(number(plain.out(), "value_running"));
        assertThat(told.out()).containsPattern("Your comparables move the price level by \\+\\d\\.\\d %")
                .contains("comparables.csv, row 3", "sold", "asked", "Priced cars most like it", "miles fewer");
        assertThat(told.err()).contains("7 comparable(s) of your own from comparables.csv");
        double whole = share(told.out().lines().filter(l -> l.startsWith("Your comparables")).findFirst().orElseThrow());
        double sum = told.out().lines().filter(l -> l.matches("comparables.csv, row \\d .*%\\s*"))
                .mapToDouble(ValueCommandsTest::share).sum();
        assertThat(sum).isCloseTo(whole, within(0.05 * 8));
    }

    private static double share(String line) {
        Matcher last = Pattern.compile("([+-]\\d+\\.\\d) %\\s*$").matcher(line);
        assertThat(last.find()).as(line).isTrue();
        return Double.parseDouble(last.group(1));
    }

    private static double number(String json, String field) {
        Matcher m = Pattern.compile("\"" + field + "\"\\s*:\\s*([\\d.]+)").matcher(json);
        assertThat(m.find()).isTrue();
        return Double.parseDouble(m.group(1));
    }

    @Test
    void bad_comparables_are_listed_and_the_good_ones_count() throws IOException {
        String own = file("own.csv", "year,make,model,odometer,price,currency,price_kind,title\n"
                + "2012,volkswagen,jetta,98000,6000,USD,asked,clean\n"
                + "2012,volkswagen,jetta,98000,,USD,asked,clean\n"
                + "2012,volkswagen,jetta,97000,6000,EUR,sold,clean\n"
                + "2012,volkswagen,jetta,96000,6000,USD,swapped,clean\n"
                + "2012,volkswagen,jetta,lots,6000,USD,sold,clean\n");
        Run run = Run.of("judge", LOT, "--today", "2026-01-15", "--comparables", own);

        assertThat(run.code()).isEqualTo(ExitCode.OK);
        assertThat(run.err()).contains("own.csv, row 3, column price: there is none", "own.csv, row 4, column price: is in EUR",
                "own.csv, row 5, column price_kind: 'swapped' is neither asked nor sold", "row 6, column odometer",
                "1 comparable(s) of your own");
    }

    @Test
    void without_any_row_it_says_why_there_is_none() {
        assertThat(Run.of("judge", LOT, "--today", "2026-01-15").out())
                .contains("Priced cars like it: none. The price model carries no rows of its data",
                "--comparables FILE", "--prices FILE");
    }

    @Test
    void rows_of_a_named_table_are_shown_and_one_of_another_market_is_refused() throws IOException {
        String table = file("seen.csv",
                "Asking,Make,Model,Year,Mileage,Seen\n$5200,Volkswagen,Jetta,2011,\"101,000 mi\",2025-10-01\n"
                + "$6100,Volkswagen,Jetta,2013,\"95,000 mi\",2025-10-02\n");
        Run run = Run.of("judge", LOT, "--today", "2026-01-15", "--prices", table);
        Run other = Run.of("judge", LOT, "--today", "2026-01-15", "--prices",
                file("fern.csv", "Asking,Make,Model,Year,Mileage,Seen\n\u20ac5200,Volkswagen,Jetta,2011,101000,2025-10-01\n"));

        assertThat(run.out()).contains("Priced cars most like it", "2011 volkswagen jetta", "seen.csv, line 2", "5,200  asked");
        assertThat(run.err()).contains("'Asking' in USD", "odometer");
        assertThat(other.code()).isEqualTo(ExitCode.USAGE);
        assertThat(other.err()).contains("is of market DE in EUR, the price model of US in USD");
    }

    @Test
    void the_german_model_judges_in_euros_and_kilometres_and_says_what_was_converted() throws IOException {
        Run run = Run.of("explain", file("de.csv", GERMAN), "--model", "de", "--today", "2016-04-01", "--place", "de_private");

        assertThat(run.code()).isEqualTo(ExitCode.OK);
        assertThat(run.out()).contains("Market DE (Germany): money in EUR, odometers in km",
                "The catalogue's costs are in USD and taken times 0.92 (guess", "asked 3,200 EUR", "EUR ", "120,000 km");
        assertThat(run.out()).doesNotContain(" miles,").doesNotContain("USD 1");
        assertThat(run.out()).as("limousine is read as sedan, which the typical golf is too").doesNotContain("  body  ");
    }

    @Test
    void the_british_model_judges_in_pounds_and_miles() throws IOException {
        String lot = file("uk.csv", "id,year,make,model,odometer,price,title\nB1,2014,Vauxhall,Corsa,52000,1500,clean\n");
        Run run = Run.of("explain", lot, "--model", "uk", "--today", "2020-07-01", "--place", "uk_private");

        assertThat(run.code()).isEqualTo(ExitCode.OK);
        assertThat(run.out()).contains("Market UK (United Kingdom): money in GBP, odometers in miles",
                "asked 1,500 GBP", "52,000 miles");
        assertThat(run.out()).doesNotContain(" km").doesNotContain("EUR");
    }

    @Test
    void another_factor_for_the_catalogues_money_changes_the_deal_and_is_the_users() throws IOException {
        String lot = file("de.csv", GERMAN);
        Run cheap = Run.of("judge", "--json", lot, "--model", "de", "--today", "2016-04-01", "--catalogue-money", "0.5");
        Run dear = Run.of("judge", "--json", lot, "--model", "de", "--today", "2016-04-01", "--catalogue-money", "1.5");
        Run told = Run.of("rank", lot, "--model", "de", "--today", "2016-04-01", "--catalogue-money", "1.5");

        assertThat(number(cheap.out(), "most_to_pay")).isGreaterThan(number(dear.out(), "most_to_pay"));
        assertThat(number(cheap.out(), "value_running")).isEqualTo(number(dear.out(), "value_running"));
        assertThat(told.out()).contains("times 1.50 (user");
        assertThat(Run.of("judge", lot, "--model", "de", "--catalogue-money", "0").code()).isEqualTo(ExitCode.USAGE);
    }

    @Test
    void currencies_are_never_summed_in_silence() throws IOException {
        Run dollars = Run.of("judge", file("us.csv", GERMAN.replace("price,title", "price_usd,title")), "--model", "de");
        Run texas = Run.of("judge", file("de.csv", GERMAN), "--model", "de", "--place", "us_texas");

        assertThat(dollars.code()).isEqualTo(ExitCode.SOME_ROWS_REFUSED);
        assertThat(dollars.err()).contains("the price is in USD but the money lines are in EUR");
        assertThat(texas.code()).isEqualTo(ExitCode.USAGE);
        assertThat(texas.err()).contains("place 'us_texas' has money in USD, the deal's is in EUR");
    }

    @Test
    void beyond_the_data_the_text_says_so_and_the_interval_is_wider() throws IOException {
        String head = "id,year,make,model,odometer,price,title,seen\n";
        String inside = judged(head + "A,2008,ford,focus,120000,900,clean,2019-04-01\n");
        String old = judged(head + "A,1960,ford,focus,120000,900,clean,2019-04-01\n");
        String far = judged(head + "A,2008,ford,focus,600000,900,clean,2019-04-01\n");
        String model = judged(head + "A,2008,ford,zephyr,120000,900,clean,2019-04-01\n");
        String make = judged(head + "A,2008,zeppelin,zephyr,120000,900,clean,2019-04-01\n");

        assertThat(inside).doesNotContain("Mind:");
        assertThat(old).contains("The age of 59 years is beyond the price data");
        assertThat(far).contains("The mileage of 600,000 miles is beyond the price data");
        assertThat(model).contains("The model 'zephyr' is not in the price data", "too high for a small or cheap one");
        assertThat(make).contains("The make 'zeppelin' is not in the price data", "whatever the make");
        for (String beyond : List.of(old, far, model, make)) {
            assertThat(width(beyond)).isGreaterThan(width(inside));
        }
        assertThat(width(make)).isGreaterThan(width(model));
        for (String unknown : List.of(model, make)) {
            assertThat(unknown).doesNotContainPattern("(?m)^Buy");
        }
    }

    private String judged(String table) throws IOException {
        Run run = Run.of("judge", file("lot.csv", table), "--today", "2026-01-15");
        assertThat(run.code()).as(run.err()).isEqualTo(ExitCode.OK);
        return run.out();
    }

    /** Upper end of the 80 % interval over the lower one. */
    private static double width(String judged) {
        Matcher m = Pattern.compile("80 % between ([\\d,]+) and ([\\d,]+)").matcher(judged);
        assertThat(m.find()).isTrue();
        return Double.parseDouble(m.group(2).replace(",", "")) / Double.parseDouble(m.group(1).replace(",", ""));
    }

    @Test
    void a_british_reader_is_told_of_petrol_and_an_american_one_of_gas() throws IOException {
        String lot = file("lot.csv", "id,year,make,model,odometer,price,title\nA,2014,ford,focus,60000,3200,clean\n");
        String british = Run.of("explain", "--model", "uk", "--today", "2026-01-15", lot).out();

        assertThat(british).contains("petrol").doesNotContain(" gas");
        assertThat(Run.of("explain", "--today", "2026-01-15", lot).out()).contains(" gas").doesNotContain("petrol");
    }
}
