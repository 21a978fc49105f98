package worthsaving.market;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.io.Reader;
import java.io.StringReader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Currency;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import worthsaving.quantity.Distance;

/** Tables as people keep them; cars and prices invented. */
class TableMatcherTest {

    private static final Path MARKET = Path.of("shared", "market");

    private static TableMatcher matcher() throws IOException {
        try (Reader markets = Files.newBufferedReader(MARKET.resolve("markets.csv"));
                Reader names = Files.newBufferedReader(MARKET.resolve("column_names.csv"));
                Reader words = Files.newBufferedReader(MARKET.resolve("word_names.csv"))) {
            return new TableMatcher(Market.read(markets), names, words, Set.of("ford", "toyota", "vw"),
                    Set.of("focus", "corolla", "golf"));
        }
    }

    private static MatchedTable match(String table, MatchWishes wishes) throws IOException {
        return matcher().match(new StringReader(table), wishes);
    }

    private static PriceTable read(String table, MatchWishes wishes) throws IOException {
        MatchedTable matched = match(table, wishes);
        return PriceTableReader.read(new StringReader(table), matched.shape(), matched.style());
    }

    private static MatchWishes wishes(Map<String, String> columns, String currency, Distance.Unit unit, String date) {
        return new MatchWishes("mine.csv", columns, Optional.ofNullable(currency).map(Currency::getInstance),
                Optional.ofNullable(unit), Optional.ofNullable(date).map(LocalDate::parse), Optional.empty(),
                Optional.empty());
    }

    @Test
    void reads_an_american_table_with_signs_and_commas() throws IOException {
        PriceTable table = read("""
                # my notes
                Asking Price,Brand,Model,Model Year,Mileage,Fuel type,Transmission,Seen
                "$4,500",Ford,Focus,2012,"98,000 mi",Petrol,Auto,3/15/2025
                "$6,250",Toyota,Corolla,2013,"88,500 miles",Gasoline,Stick,4/2/2025
                """, MatchWishes.none("mine.csv"));

        assertThat(table.badCount()).isZero();
        PriceRow first = table.rows().get(0);
        assertThat(first.price()).isEqualTo(4500);
        assertThat(first.miles()).isEqualTo(98_000);
        assertThat(first.fuel()).isEqualTo("gas");
        assertThat(first.gearbox()).isEqualTo("automatic");
        assertThat(first.date()).isEqualTo(LocalDate.of(2025, 3, 15));
        assertThat(table.rows().get(1).date()).as("months first, as the other row tells").isEqualTo(LocalDate.of(2025, 4, 2));
        assertThat(table.rows().get(1).gearbox()).isEqualTo("manual");
        assertThat(table.shape().market()).isEqualTo("US");
    }

    /** One mile is exactly 1.609344 km, one kW is 1.35962 metric horsepower (DIN 66036). */
    @Test
    void reads_a_german_table_with_points_kilometres_kilowatts_and_cubic_centimetres() throws IOException {
        PriceTable table = read("""
                Preis (EUR);Marke;Modell;Baujahr;Kilometerstand;Leistung kW;Hubraum;Kraftstoff;Getriebe;Datum
                12.500;VW;Golf;2016;98.000;81;1598;Benzin;Schaltgetriebe;03.04.2025
                3.400,- \u20ac;Ford;Focus;2009;171.500 km;74;1.596;Diesel;Automatik;15.04.2025
                """, MatchWishes.none("mine.csv"));

        PriceRow first = table.rows().get(0);
        assertThat(table.badRows()).isEmpty();
        assertThat(first.price()).isEqualTo(12_500);
        assertThat(first.miles()).isCloseTo(98_000 / 1.609344, within(1e-9));
        assertThat(first.power()).isCloseTo(110.1, within(0.1));
        assertThat(first.litres()).isCloseTo(1.598, within(1e-9));
        assertThat(first.date()).isEqualTo(LocalDate.of(2025, 4, 3));
        assertThat(table.rows().get(1).price()).isEqualTo(3_400);
        assertThat(table.shape().market()).isEqualTo("DE");
        assertThat(table.shape().currency()).isEqualTo(Currency.getInstance("EUR"));
    }

    @Test
    void tells_columns_without_a_known_name_by_their_content() throws IOException {
        MatchedTable matched = match("""
                A,B,C,D,E,F
                \u00a32300,Ford,Focus,2012,98000 km,2025-03-01
                \u00a33100,Toyota,Corolla,2014,70000 km,2025-03-02
                """, wishes(Map.of("date", "F"), null, null, null));

        assertThat(matched.shape().columns()).containsEntry(Field.PRICE, "A").containsEntry(Field.MAKE, "B")
                .containsEntry(Field.MODEL, "C").containsEntry(Field.YEAR, "D").containsEntry(Field.ODOMETER, "E");
        assertThat(matched.shape().odometerUnit()).isEqualTo(Distance.Unit.KILOMETRES);
        assertThat(matched.shape().market()).isEqualTo("UK");
        assertThat(String.join("\n", matched.lines())).contains("price", "from 'A' in GBP (2 of 2 cells say GBP)",
                "its content: 2 of 2 cells are such", "as you say");
    }

    @Test
    void asks_for_all_that_it_cannot_tell_at_once() {
        assertThatThrownBy(() -> match("what,built by,kind,when\n2300,Zeppelin,LZ,soon\n3100,Zeppelin,LX,late\n",
                MatchWishes.none("mine.csv")))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("--column price=HEADER")
                .hasMessageContaining("--column make=HEADER")
                .hasMessageContaining("--column model=HEADER")
                .hasMessageContaining("--column year=HEADER")
                .hasMessageContaining("--date 2025-11-01")
                .hasMessageContaining("what, built by, kind, when");
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {
        "price|nothing tells the currency of 'price'; say it: --currency",
        "price_chf|nothing tells the currency",
    })
    void does_not_assume_a_currency(String header, String message) {
        assertThatThrownBy(() -> match(header + ",make,model,year,date\n2300,Ford,Focus,2012,2025-03-01\n",
                wishes(header.equals("price") ? Map.of() : Map.of("price", header), null, null, null)))
                .hasMessageContaining(message);
    }

    @Test
    void the_user_overrules_currency_unit_and_column() throws IOException {
        String table = "price_usd,ask,make,model,year,odometer_mi,date\n1,2300,Ford,Focus,2012,160934.4,2025-03-01\n";
        PriceTable read = read(table, wishes(Map.of("price", "ask"), "GBP", Distance.Unit.KILOMETRES, null));

        assertThat(read.rows().get(0).price()).isEqualTo(2300);
        assertThat(read.rows().get(0).miles()).isCloseTo(100_000, within(1e-6));
        assertThat(read.shape().market()).isEqualTo("UK");
    }

    @Test
    void a_name_with_other_content_is_left_out_and_said() throws IOException {
        MatchedTable matched = match("price_usd,make,model,year,mileage,date\n2300,Ford,Focus,2012,low,2025-03-01\n"
                + "2400,Ford,Focus,2013,high,2025-03-01\n", MatchWishes.none("mine.csv"));

        assertThat(matched.shape().columns()).doesNotContainKey(Field.ODOMETER);
        assertThat(String.join("\n", matched.lines())).contains("'mileage' is called like a column of odometer, but only 0 of 2",
                "the model will not know mileage");
    }

    @Test
    void bad_rows_are_listed_with_line_column_and_value() throws IOException {
        PriceTable table = read("price_usd,make,model,year,mileage,date\n2300,Ford,Focus,2012,90000,2025-03-01\n"
                + "call,Ford,Focus,2013,90000,2025-03-01\n2400,Ford,Focus,2013,90000,2025-13-01\n"
                + "2500,Ford,Focus,2013,90000,2025-03-02\n", MatchWishes.none("mine.csv"));

        assertThat(table.rows()).hasSize(2);
        assertThat(table.badRows()).extracting(BadRow::line, BadRow::column, BadRow::value)
                .containsExactly(org.assertj.core.groups.Tuple.tuple(3L, "price_usd", "call"),
                        org.assertj.core.groups.Tuple.tuple(4L, "date", "2025-13-01"));
    }

    @Test
    void a_sold_price_column_is_taken_as_paid() throws IOException {
        MatchedTable matched = match("sold price,make,model,year,date\n$2300,Ford,Focus,2012,2025-03-01\n",
                MatchWishes.none("mine.csv"));

        assertThat(matched.shape().priceKind()).isEqualTo(PriceKind.SALE);
    }

    @Test
    void an_empty_table_or_one_column_is_refused() {
        for (String table : new String[] {"", "price\n2300\n", "price,make\n"}) {
            assertThatThrownBy(() -> match(table, MatchWishes.none("mine.csv"))).hasMessageContaining("needs a header");
        }
    }

    private static String dated(String... days) {
        StringBuilder table = new StringBuilder("Price EUR,Make,Model,Year,Date\n");
        for (String day : days) {
            table.append("4500,Ford,Focus,2012,").append(day).append('\n');
        }
        return table.toString();
    }

    @ParameterizedTest
    @CsvSource({
        "3/4/2025 5/13/2025, EUR, false, as other cells tell",
        "3/4/2025 13/5/2025, EUR, true, as other cells tell",
        "13/5/2025 14/5/2025 5/20/2025, EUR, true, as other cells tell",
        "3/4/2025 12/12/2025, EUR, true, as is usual in market",
        "3/4/2025 12/12/2025, USD, false, as is usual in market",
        "13/5/2025 5/13/2025, EUR, true, as is usual in market",
    })
    void days_are_read_as_other_cells_tell_or_the_market_writes(String days, String currency, boolean dayFirst,
            String why) throws IOException {
        MatchedTable matched = match(dated(days.split(" ")).replace("EUR", currency), MatchWishes.none("mine.csv"));

        assertThat(matched.style().dayFirst()).isEqualTo(dayFirst);
        assertThat(matched.notes()).anyMatch(n -> n.contains((dayFirst ? "day" : "month") + " first") && n.contains(why));
    }

    @Test
    void days_without_slashes_need_no_order() throws IOException {
        MatchedTable matched = match(dated("2025-03-04"), MatchWishes.none("mine.csv"));

        assertThat(matched.style().dayFirst()).isFalse();
        assertThat(matched.notes()).noneMatch(n -> n.contains("first, "));
    }

    @Test
    void what_the_user_says_against_the_table_is_told() throws IOException {
        MatchWishes said = new MatchWishes("mine.csv", Map.of(), Optional.of(Currency.getInstance("USD")),
                Optional.of(Distance.Unit.KILOMETRES), Optional.of(LocalDate.of(2025, 6, 1)), Optional.of(PriceKind.SALE),
                Optional.of("US"));
        MatchedTable matched = match("Price EUR,Make,Model,Year,Mileage\n4500,Ford,Focus,2012,98000\n", said);

        assertThat(matched.notes()).anyMatch(n -> n.startsWith("prices are taken as USD as you say, though of 'Price EUR'"))
                .anyMatch(n -> n.equals("market US (United States), as you say"))
                .anyMatch(n -> n.equals("prices are taken as paid, as you say"))
                .anyMatch(n -> n.equals("all prices are taken as of 2025-06-01, as you say"));
        assertThat(matched.shape().priceKind()).isEqualTo(PriceKind.SALE);
        assertThat(matched.shape().odometerUnit()).isEqualTo(Distance.Unit.KILOMETRES);
        assertThat(matched.matches()).anyMatch(m -> m.field() == Field.PRICE && m.unit().equals("USD (as you say)"))
                .anyMatch(m -> m.field() == Field.ODOMETER && m.unit().equals("km (as you say)"));
    }

    @Test
    void what_nothing_tells_of_is_said_to_be_usual() throws IOException {
        MatchedTable matched = match("Price EUR,Make,Model,Year,Date,Odometer,Shed\n4500,Ford,Focus,2012,2025-03-04,98000,7\n",
                MatchWishes.none("mine.csv"));

        assertThat(matched.notes()).anyMatch(n -> n.equals("prices are taken as asked; --kind sold if not"))
                .anyMatch(n -> n.contains("the first whose currency it is; --market for another"));
        assertThat(matched.shape().priceKind()).isEqualTo(PriceKind.ASKING);
        assertThat(matched.matches()).anyMatch(m -> m.field() == Field.ODOMETER && m.unit().contains("usual in market"));
        assertThat(matched.ignored()).containsExactly("Shed");
    }

    @Test
    void without_an_odometer_the_model_is_said_not_to_know_mileage() throws IOException {
        MatchedTable matched = match(dated("2025-03-04"), MatchWishes.none("mine.csv"));

        assertThat(matched.notes()).anyMatch(n -> n.startsWith("no column holds the odometer"));
        assertThat(matched.matches()).noneMatch(m -> m.field() == Field.ODOMETER);
    }

    @Test
    void a_market_of_another_currency_or_unknown_is_refused_with_those_there_are() {
        MatchWishes american = new MatchWishes("mine.csv", Map.of(), Optional.empty(), Optional.empty(), Optional.empty(),
                Optional.empty(), Optional.of("US"));
        assertThatThrownBy(() -> match(dated("2025-03-04"), american))
                .hasMessageContaining("market US has prices in USD, the table in EUR").hasMessageContaining("DE (EUR)");
        MatchWishes nowhere = new MatchWishes("mine.csv", Map.of(), Optional.empty(), Optional.empty(), Optional.empty(),
                Optional.empty(), Optional.of("XX"));
        assertThatThrownBy(() -> match(dated("2025-03-04"), nowhere)).hasMessageContaining("there is no market 'XX'");
        MatchWishes yen = new MatchWishes("mine.csv", Map.of(), Optional.of(Currency.getInstance("JPY")), Optional.empty(),
                Optional.empty(), Optional.empty(), Optional.empty());
        assertThatThrownBy(() -> match(dated("2025-03-04"), yen)).hasMessageContaining("no market has prices in JPY");
    }
}
