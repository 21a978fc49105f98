package worthsaving.intake;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.StringReader;
import java.time.LocalDate;
import java.util.Currency;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import worthsaving.quantity.Distance;
import worthsaving.quantity.Money;
import worthsaving.vehicle.Fact;

/** Figures at the edge of what is taken, and what is taken for granted where a table says nothing. */
class MoneyAndDaysTest {

    @ParameterizedTest
    @CsvSource({"0.01, true", "1, true", "10000000, true", "10000001, false", "0, false", "-0.01, false"})
    void prices_from_above_zero_to_ten_million(String price, boolean taken) {
        assertThat(Tables.read(Tables.HEADER, "A1,2012,ford,focus,90000," + price).entries()).hasSize(taken ? 1 : 0);
    }

    @ParameterizedTest
    @CsvSource({"0, true", "999999, true", "1000000, false", "-1, false"})
    void odometers_of_six_digits(String odometer, boolean taken) {
        assertThat(Tables.read(Tables.HEADER, "A1,2012,ford,focus," + odometer + ",1500").entries())
                .hasSize(taken ? 1 : 0);
    }

    @ParameterizedTest
    @CsvSource({"1899, false", "1900, true", "2027, true", "2028, false", "2012.0, true", "212, false"})
    void model_years_up_to_the_next(String year, boolean taken) {
        assertThat(Tables.read(Tables.HEADER, "A1," + year + ",ford,focus,90000,1500").entries())
                .hasSize(taken ? 1 : 0);
    }

    /** A car cannot be two model years newer than the day it was seen. */
    @Test
    void the_day_of_the_listing_bounds_the_year() {
        String header = Tables.HEADER + ",seen";

        assertThat(Tables.read(header, "A1,2017,ford,focus,9000,1500,2016-03-01").entries()).hasSize(1);
        assertThat(Tables.read(header, "A1,2018,ford,focus,9000,1500,2016-03-01").faults())
                .extracting(IntakeFault::column).containsExactly("year");
    }

    @ParameterizedTest
    @CsvSource({
        "2026-11-25, 2026-11-25", "2021-04, 2021-04-01", "2016-03-26 00:00:00, 2016-03-26",
        "2016-03-26T10:11:12Z, 2016-03-26", "26.3.2016, 2016-03-26"
    })
    void days_in_several_writings(String text, LocalDate day) {
        assertThat(Tables.one(Tables.withColumn("seen", text)).listing().seen()).isEqualTo(day);
    }

    @ParameterizedTest
    @CsvSource({"17, 2017", "'''99', 1999", "27, 2027", "28, 1928", "00, 2000"})
    void two_digits_of_a_year_mean_the_latest_possible_one(String text, int year) {
        Fact<Integer> read = Tables.one(Tables.read(Tables.HEADER, "A1," + text + ",ford,focus,90000,1500"))
                .listing().vehicle().year();

        assertThat(read.get()).contains(year);
        assertThat(read.isKnown()).isFalse();
    }

    @Test
    void settings_fill_in_currency_unit_and_day() throws Exception {
        IntakeSettings canadian = new IntakeSettings(
                Tables.TODAY, Currency.getInstance("CAD"), Distance.Unit.KILOMETRES);
        Lot lot = new ListingReader(Tables.VOCABULARY, canadian).read(
                new StringReader(Tables.HEADER + "\nA1,2012,ford,focus,210 000,$2800\n"), "t.csv");

        assertThat(Tables.one(lot).listing().ask()).isEqualTo(Fact.known(Money.of(2800, "CAD")));
        // 210,000 km are 130,488 miles: 210000 / 1.609344, international yard of 1959.
        assertThat(Tables.one(lot).listing().vehicle().odometer().get().orElseThrow().miles())
                .isBetween(130_487.5, 130_488.5);
        assertThat(Tables.one(lot).listing().seen()).isEqualTo(Tables.TODAY);
    }

    @ParameterizedTest
    @CsvSource({
        "USD, 1500 EUR, price", "EUR, $1500, price", "EUR, 1500 GBP, price", "dollars, 1500, currency",
        "USD, 1500 pesos, price"
    })
    void money_in_two_currencies_costs_the_row(String currency, String price, String column) {
        Lot lot = Tables.read(
                "year,make,model,odometer,price,currency", "2012,ford,focus,90000," + price + "," + currency);

        assertThat(lot.entries()).isEmpty();
        assertThat(lot.faults()).singleElement().satisfies(f -> {
            assertThat(f.column()).isEqualTo(column);
            assertThat(f.row()).isEqualTo(2);
        });
    }

    @ParameterizedTest
    @CsvSource({"0, 0", "12, 12", "12.5, 12.5", "40 mi, 40", "5000, 5000"})
    void tow_miles(String text, double miles) {
        assertThat(Tables.one(Tables.withColumn("tow_miles", text)).listing().towMiles()).isEqualTo(Fact.known(miles));
    }

    @ParameterizedTest
    @CsvSource({"N/A", "-", "unknown", "?", "NULL", "nan"})
    void words_for_nothing_are_blank(String text) {
        Lot lot = Tables.read(Tables.HEADER, "A1," + text + ",ford,focus," + text + ",1500");

        assertThat(lot.faults()).isEmpty();
        assertThat(Tables.one(lot).listing().vehicle().year()).isEqualTo(Fact.unknown());
        assertThat(Tables.one(lot).listing().vehicle().odometer()).isEqualTo(Fact.unknown());
    }

    @Test
    void true_mileage_unknown_is_unknown() {
        assertThat(Tables.one(Tables.read(Tables.HEADER, "A1,2012,ford,focus,TMU,1500"))
                        .listing().vehicle().odometer())
                .isEqualTo(Fact.unknown());
    }
}
