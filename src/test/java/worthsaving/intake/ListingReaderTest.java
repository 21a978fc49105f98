package worthsaving.intake;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.io.StringReader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.Test;
import worthsaving.quantity.Distance;
import worthsaving.quantity.Money;
import worthsaving.vehicle.Exposure;
import worthsaving.vehicle.Fact;
import worthsaving.vehicle.Listing;
import worthsaving.vehicle.Observation;
import worthsaving.vehicle.Observation.Sight;
import worthsaving.vehicle.Observation.Witness;
import worthsaving.vehicle.Powertrain;
import worthsaving.vehicle.TitleBrand;

/** Good rows: what becomes of them. What is wrong with bad ones is in {@link IntakeFaultsTest}. */
class ListingReaderTest {

    @Test
    void reads_the_invented_lot_without_a_word() throws IOException {
        Vocabulary unchecked = new Vocabulary(Set.of(), Set.of(), Map.of(), Set.of());
        try (InputStream in = Files.newInputStream(Path.of("shared/samples/lot.csv"))) {
            Lot lot = new ListingReader(unchecked, Tables.SETTINGS).read(in, "lot.csv");

            assertThat(lot.faults()).isEmpty();
            assertThat(lot.listings()).hasSize(25).extracting(Listing::id).doesNotHaveDuplicates();
            assertThat(lot.listings()).allSatisfy(l -> {
                assertThat(l.vehicle().year().isKnown()).isTrue();
                assertThat(l.vehicle().odometer().isKnown()).isTrue();
                assertThat(l.ask().isKnown()).isTrue();
                assertThat(l.story()).isNotBlank();
                assertThat(l.observations()).isNotEmpty();
                assertThat(l.vehicle().title()).isNotEqualTo(TitleBrand.UNKNOWN);
            });
            assertThat(lot.summary().unusedColumns()).isEmpty();
            assertThat(lot.entries().get(0).codes()).containsExactly(
                    new ReadCode(new TroubleCode("P0016"), ReadCode.Status.STORED, 1));
            assertThat(lot.entries().get(0).quote()).isEqualTo(Fact.known(Money.usd(4900)));
        }
    }

    @Test
    void reads_every_column_of_our_own_format() {
        LotEntry entry = Tables.one(Tables.read(
                "id,year,make,model,trim,engine,timing,gearbox,drive,odometer,odometer_unit,price,currency,title,"
                        + "tow_miles,present,absent,unsure,seller_says,found_failed,found_sound,drove_on,"
                        + "stopped_at_once,codes,quote,story,seen",
                "K1,2012,Ford,Focus,SE,petrol turbo,belt,dual clutch,front,150000,km,1500,CAD,rebuilt,12.5,"
                        + "overheats,KNOCKS,COLD_START_RATTLE,HEAD_GASKET !KNOCKS,WATER_PUMP,HEAD_GASKET,overheating,"
                        + "misfire,p0300,2400,\"It stopped, said he.\",2026-11-20"));
        Listing listing = entry.listing();

        assertThat(listing.id()).isEqualTo("K1");
        assertThat(listing.origin()).isEqualTo("t.csv, row 2");
        assertThat(listing.vehicle().label()).isEqualTo("2012 ford focus");
        assertThat(listing.vehicle().trim()).isEqualTo(Fact.known("SE"));
        assertThat(listing.vehicle().odometer()).isEqualTo(Fact.known(Distance.ofKilometres(150_000)));
        assertThat(listing.vehicle().title()).isEqualTo(TitleBrand.REBUILT);
        assertThat(listing.vehicle().powertrain()).isEqualTo(new Powertrain(
                Fact.known(Powertrain.Engine.PETROL_TURBO),
                Fact.known(Powertrain.TimingDrive.BELT),
                Fact.known(Powertrain.Gearbox.DUAL_CLUTCH),
                Fact.known(Powertrain.Drive.FRONT)));
        assertThat(listing.ask()).isEqualTo(Fact.known(Money.of(1500, "CAD")));
        assertThat(entry.quote()).isEqualTo(Fact.known(Money.of(2400, "CAD")));
        assertThat(listing.towMiles()).isEqualTo(Fact.known(12.5));
        assertThat(listing.seen()).isEqualTo(LocalDate.of(2026, 11, 20));
        assertThat(listing.story()).isEqualTo("It stopped, said he.");
        assertThat(listing.exposure().level(Exposure.Hazard.OVERHEATING)).isEqualTo(Exposure.Level.DRIVEN_ON);
        assertThat(listing.exposure().level(Exposure.Hazard.MISFIRE)).isEqualTo(Exposure.Level.STOPPED_AT_ONCE);
        assertThat(listing.exposure().level(Exposure.Hazard.LOW_OIL_PRESSURE)).isEqualTo(Exposure.Level.UNKNOWN);
        assertThat(listing.observations()).containsExactly(
                Observation.present("OVERHEATS"),
                Observation.absent("KNOCKS"),
                new Observation("COLD_START_RATTLE", Sight.UNSURE, Witness.OWN_EYES),
                new Observation("HEAD_GASKET", Sight.PRESENT, Witness.SELLER),
                new Observation("KNOCKS", Sight.ABSENT, Witness.SELLER),
                Observation.present("WATER_PUMP"),
                Observation.absent("HEAD_GASKET"),
                Observation.present("CODE_MISFIRE"));
    }

    @Test
    void blank_cells_are_unknown_and_no_fault() {
        Lot lot = Tables.read(Tables.HEADER + ",engine,title,tow_miles,story,present,codes,quote",
                "K1,,ford,,,1500,,,,,,,");
        LotEntry entry = Tables.one(lot);

        assertThat(lot.faults()).isEmpty();
        assertThat(entry.listing().vehicle().year()).isEqualTo(Fact.unknown());
        assertThat(entry.listing().vehicle().odometer()).isEqualTo(Fact.unknown());
        assertThat(entry.listing().vehicle().model()).isEqualTo(Fact.unknown());
        assertThat(entry.listing().vehicle().powertrain()).isEqualTo(Powertrain.UNKNOWN);
        assertThat(entry.listing().vehicle().title()).isEqualTo(TitleBrand.UNKNOWN);
        assertThat(entry.listing().towMiles()).isEqualTo(Fact.unknown());
        assertThat(entry.listing().seen()).isEqualTo(Tables.TODAY);
        assertThat(entry.listing().observations()).isEmpty();
        assertThat(entry.quote()).isEqualTo(Fact.unknown());
    }

    @Test
    void a_row_without_id_is_called_by_its_row() {
        assertThat(Tables.read("year,make,model,odometer,price", "", "2012,ford,focus,90000,1500").listings())
                .extracting(Listing::id)
                .containsExactly("row3");
    }

    @Test
    void a_code_that_stands_for_a_finding_already_told_counts_once() {
        LotEntry entry = Tables.one(Tables.read(Tables.HEADER + ",present,codes",
                "A1,2012,ford,focus,90000,1500,OVERHEATS,P0217"));

        assertThat(entry.listing().observations()).containsExactly(Observation.present("OVERHEATS"));
    }

    @Test
    void two_digits_of_a_year_and_crossed_out_miles_are_assumptions_with_a_reason() {
        LotEntry entry = Tables.one(Tables.read(Tables.HEADER, "A1,'17,ford,focus,131xxx,1500"));

        assertThat(entry.listing().vehicle().year())
                .isEqualTo(Fact.assumed(2017, "the table gives two digits of the year"));
        assertThat(entry.listing().vehicle().odometer().isKnown()).isFalse();
        assertThat(entry.listing().vehicle().odometer().get()).contains(Distance.ofMiles(131_000));
    }

    @Test
    void takes_the_quote_off_that_an_export_put_on() {
        assertThat(Tables.one(Tables.withColumn("story", "'=SUM(A1)")).listing().story()).isEqualTo("=SUM(A1)");
        assertThat(Tables.one(Tables.withColumn("story", "'tis fine")).listing().story()).isEqualTo("'tis fine");
    }

    @Test
    void unused_columns_are_named_and_the_order_of_columns_is_free() {
        Lot lot = Tables.read("price,colour,model,odometer,make,year", "1500,red,focus,90000,ford,2012");

        assertThat(lot.summary().unusedColumns()).containsExactly("colour");
        assertThat(Tables.one(lot).listing().vehicle().label()).isEqualTo("2012 ford focus");
    }

    @Test
    void reading_stops_when_the_sink_says_so() throws IOException {
        StringBuilder table = new StringBuilder(Tables.HEADER + "\n");
        for (int i = 0; i < 5_000; i++) {
            table.append("A").append(i).append(",2012,ford,focus,90000,1500\n");
        }
        CountingSink sink = new CountingSink(2);
        LotSummary summary = Tables.reader().read(new StringReader(table.toString()), "t.csv", sink);

        assertThat(summary.cancelled()).isTrue();
        assertThat(summary.good()).isEqualTo(2_000).isEqualTo(sink.good);
        assertThat(sink.rowsReported).isEqualTo(2_000);
        assertThat(sink.charactersReported).isPositive();
    }
}
