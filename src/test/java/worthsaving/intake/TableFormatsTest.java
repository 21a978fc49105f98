package worthsaving.intake;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.Charset;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import worthsaving.quantity.Distance;
import worthsaving.quantity.Money;
import worthsaving.vehicle.Fact;
import worthsaving.vehicle.Listing;
import worthsaving.vehicle.Powertrain.Drive;
import worthsaving.vehicle.Powertrain.Engine;
import worthsaving.vehicle.Powertrain.Gearbox;

/** Encodings, separators, spellings of figures, and the columns of open price data. */
class TableFormatsTest {

    @Test
    void reads_european_figures_in_windows_encoding_and_says_so() {
        Lot lot = Tables.bad("windows_1252.csv");

        assertThat(lot.summary().separator()).isEqualTo(';');
        assertThat(lot.listings()).extracting(l -> l.vehicle().odometer())
                .containsExactly(Fact.known(Distance.ofKilometres(210_000)), Fact.known(Distance.ofKilometres(98_000)));
        assertThat(lot.listings()).extracting(Listing::ask)
                .containsExactly(Fact.known(Money.of(1234.5, "EUR")), Fact.known(Money.of(950, "EUR")));
        assertThat(lot.listings().get(0).story()).isEqualTo("Motor l\u00e4uft nicht");
        assertThat(lot.faults()).singleElement().satisfies(f -> {
            assertThat(f.row()).isEqualTo(2);
            assertThat(f.what()).contains("1 byte(s)", "windows-1252");
        });
    }

    @Test
    void reads_tabs_a_byte_order_mark_and_advert_figures() {
        Lot lot = Tables.bad("bom_tabs.tsv");

        assertThat(lot.faults()).isEmpty();
        assertThat(lot.listings()).extracting(l -> l.vehicle().odometer().get().orElseThrow().miles())
                .containsExactly(98_000.0, 131_000.0);
        assertThat(lot.listings()).extracting(Listing::ask)
                .containsExactly(Fact.known(Money.usd(2300)), Fact.known(Money.usd(1600)));
    }

    @Test
    void reads_utf_16_without_a_mark() {
        Lot lot = Tables.bad("utf_16.csv");

        assertThat(lot.summary().encoding()).isEqualTo("UTF-16LE");
        assertThat(Tables.one(lot).listing().story()).isEqualTo("na\u00efve");
    }

    @ParameterizedTest
    @ValueSource(strings = {",", ";", "\t", "|"})
    void finds_the_separator(String separator) {
        Lot lot = Tables.read(Tables.HEADER.replace(",", separator), "A1,2012,ford,focus,90000,1500"
                .replace(",", separator));

        assertThat(Tables.one(lot).listing().vehicle().label()).isEqualTo("2012 ford focus");
        assertThat(lot.summary().separator()).isEqualTo(separator.charAt(0));
    }

    @Test
    void skips_comments_and_the_separator_line_before_the_header() {
        Lot lot = Tables.read("# invented", "", "sep=;", "\"id\";\"year\";\"make\";\"model\";\"odometer\";\"price\"",
                "#1;2012;ford;focus;90000;1500");

        assertThat(Tables.one(lot).listing().id()).isEqualTo("#1");
        assertThat(Tables.one(lot).row()).isEqualTo(5);
    }

    @ParameterizedTest
    @CsvSource(delimiter = ';', value = {
        "$2,300; USD; 2300", "2300 CAD; CAD; 2300", "C$2300; CAD; 2300", "€2.300; EUR; 2300", "£950; GBP; 950",
        "2300 obo; USD; 2300", "$2300 firm; USD; 2300"
    })
    void reads_the_currency_beside_the_amount(String cell, String currency, double amount) {
        Lot lot = Tables.read(Tables.HEADER, "A1,2012,ford,focus,90000,\"" + cell + "\"");

        assertThat(Tables.one(lot).listing().ask()).isEqualTo(Fact.known(Money.of(amount, currency)));
    }

    @Test
    void a_dollar_sign_is_the_dollar_of_the_column() {
        assertThat(Tables.one(Tables.read("year,make,model,odometer,price_cad", "2012,ford,focus,90000,$1500"))
                        .listing().ask())
                .isEqualTo(Fact.known(Money.of(1500, "CAD")));
        assertThat(Tables.read("year,make,model,odometer,price_eur", "2012,ford,focus,90000,$1500").faults())
                .singleElement()
                .satisfies(f -> assertThat(f.what()).contains("USD", "EUR"));
    }

    @ParameterizedTest
    @CsvSource({
        "odometer, 90000, 90000", "miles, 90000, 90000", "Odometer (km), 90000, 55923.4", "km, 90000, 55923.4",
        "odometer_mi, 90000, 90000", "Mileage, 90k mi, 90000", "Mileage, 90000 km, 55923.4"
    })
    void reads_the_unit_of_the_odometer(String column, String cell, double miles) {
        Lot lot = Tables.read("year,make,model,price," + column, "2012,ford,focus,1500," + cell);

        assertThat(Tables.one(lot).listing().vehicle().odometer().get().orElseThrow().miles())
                .isCloseTo(miles, org.assertj.core.api.Assertions.within(0.1));
    }

    @Test
    void finds_needed_columns_by_content_when_names_do_not_tell() {
        Lot lot = Tables.read("what,model,how far,when,cost",
                "ford,focus,90000 mi,2012,$1500", "kia,soul,80k mi,2013,$1700", "Toyota,camry,99k mi,2009,$900");

        assertThat(lot.faults()).isEmpty();
        assertThat(lot.summary().columns())
                .containsEntry("make", "what").containsEntry("odometer", "how far")
                .containsEntry("year", "when").containsEntry("price", "cost");
        assertThat(lot.listings()).extracting(l -> l.vehicle().label())
                .containsExactly("2012 ford focus", "2013 kia soul", "2009 toyota camry");
    }

    @Test
    void does_not_guess_between_two_columns_of_money() {
        Lot lot = Tables.read("year,make,model,odometer,was,now", "2012,ford,focus,90000,$1500,$1200",
                "2013,kia,soul,80000,$1700,$900");

        assertThat(lot.summary().readable()).isFalse();
        assertThat(lot.faults().get(0).what()).contains("no column for price");
    }

    @Test
    void plain_words_of_price_data_are_assumptions() {
        Lot lot = Tables.read("price_usd,make,model,year,odometer_mi,fuel,transmission,awd,month",
                "9400,toyota,camry,2011,145000,gas,automatic,1,2021-05",
                "9400,toyota,prius,2011,145000,hybrid,automatic,,2021-05",
                "9400,ford,x,2011,145000,other,other,,2021-05");

        assertThat(lot.faults()).isEmpty();
        assertThat(lot.listings().get(0).vehicle().powertrain().engine().get()).contains(Engine.PETROL);
        assertThat(lot.listings().get(0).vehicle().powertrain().engine().isKnown()).isFalse();
        assertThat(lot.listings().get(0).vehicle().powertrain().gearbox().isKnown()).isFalse();
        assertThat(lot.listings().get(0).vehicle().powertrain().drive()).isEqualTo(Fact.known(Drive.ALL));
        assertThat(lot.listings().get(1).vehicle().powertrain().engine()).isEqualTo(Fact.known(Engine.HYBRID));
        assertThat(lot.listings().get(1).vehicle().powertrain().gearbox().get()).contains(Gearbox.ELECTRIC_DRIVE);
        assertThat(lot.listings().get(2).vehicle().powertrain().engine()).isEqualTo(Fact.unknown());
    }

    @Test
    void german_classes_of_mileage_and_damage() {
        LotEntry entry = Tables.one(Tables.read(
                "price_eur,make,model,reg_year,odometer_km_band,gearbox,fuel,unrepaired_damage,date",
                "900,volkswagen,golf,2004,150000,manuell,benzin,1,26.03.2016"));

        assertThat(entry.listing().vehicle().odometer().isKnown()).isFalse();
        assertThat(entry.listing().vehicle().odometer().get()).contains(Distance.ofKilometres(150_000));
        assertThat(entry.listing().vehicle().condition()).isEqualTo(Fact.known("unrepaired damage"));
        assertThat(entry.listing().vehicle().powertrain().gearbox()).isEqualTo(Fact.known(Gearbox.MANUAL));
        assertThat(entry.listing().seen()).isEqualTo("2016-03-26");
    }

    @Test
    void a_single_foreign_byte_is_placed_on_its_row() throws IOException {
        StringBuilder text = new StringBuilder(Tables.HEADER + ",story\n");
        for (int i = 2; i <= 20_000; i++) {
            String story = i == 12_345 ? "\u00fc" : "u";
            text.append("A").append(i).append(",2012,ford,focus,90000,1500,").append(story).append('\n');
        }
        byte[] bytes = text.toString().getBytes(Charset.forName("windows-1252"));
        Lot lot = Tables.reader().read(new ByteArrayInputStream(bytes), "t.csv");

        assertThat(lot.faults()).extracting(IntakeFault::row).containsExactly(12_345L);
        assertThat(lot.entries()).hasSize(19_999);
    }
}
