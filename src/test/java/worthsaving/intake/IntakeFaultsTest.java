package worthsaving.intake;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import worthsaving.intake.IntakeFault.Effect;
import worthsaving.vehicle.Fact;
import worthsaving.vehicle.Listing;
import worthsaving.vehicle.TitleBrand;

/** What is said of bad tables: row, column, what is wrong and what would mend it. */
class IntakeFaultsTest {

    @ParameterizedTest
    @CsvSource(delimiter = ';', value = {
        "empty.csv; 0; the file is empty; header line",
        "header_only.csv; 0; no rows; add a line",
        "wrong_header.csv; 1; no column for year, make, odometer, price; 'prise' may be price",
        "no_header.csv; 1; looks like data; name the columns year, make, model, odometer, price",
        "spreadsheet.csv; 0; a spreadsheet; save it as CSV"
    })
    void says_what_is_wrong_with_a_whole_file(String name, long row, String what, String mend) {
        Lot lot = Tables.bad(name);

        assertThat(lot.entries()).isEmpty();
        assertThat(lot.summary().readable()).isEqualTo(name.equals("header_only.csv"));
        assertThat(lot.faults()).singleElement().satisfies(f -> {
            assertThat(f.source()).isEqualTo(name);
            assertThat(f.row()).isEqualTo(row);
            assertThat(f.what()).contains(what);
            assertThat(f.mend()).contains(mend);
        });
    }

    @Test
    void a_wrong_header_tells_the_columns_found() {
        assertThat(Tables.bad("wrong_header.csv").faults().get(0).what())
                .contains("'jahrgang'", "'firma'", "'tachostand'");
    }

    @Test
    void names_row_and_column_of_every_impossible_figure() {
        Lot lot = Tables.bad("figures.csv");

        assertThat(lot.listings()).extracting(Listing::id).containsExactly("A7");
        assertThat(lot.faults()).allSatisfy(f -> assertThat(f.effect()).isEqualTo(Effect.ROW_REFUSED));
        assertThat(lot.faults())
                .extracting(IntakeFault::row, IntakeFault::column, IntakeFault::what)
                .containsExactly(
                        tuple(2L, "odometer", "'abc' is no odometer reading"),
                        tuple(3L, "price", "'-5' is below zero"),
                        tuple(4L, "year", "1066 is no model year between 1900 and 2027, the year after it was seen"),
                        tuple(5L, "year", "2050 is no model year between 1900 and 2027, the year after it was seen"),
                        tuple(6L, "odometer", "'1234567' is more than six digits"),
                        tuple(7L, "price", "'ask me' is no amount of money"),
                        tuple(9L, "price", "0 is no price"),
                        tuple(10L, "year", "'20 12' is no year"),
                        tuple(10L, "odometer", "'-3' is below zero"));
        assertThat(lot.refused()).extracting(RefusedRow::text).contains("A1,2012,ford,focus,abc,1500");
    }

    @Test
    void a_repeated_row_goes_and_a_repeated_id_is_changed() {
        Lot lot = Tables.bad("repeats.csv");

        assertThat(lot.listings()).extracting(Listing::id).containsExactly("A1", "A2", "A2-row5");
        assertThat(lot.faults())
                .extracting(IntakeFault::row, IntakeFault::column, IntakeFault::effect, IntakeFault::what)
                .containsExactly(
                        tuple(4L, "", Effect.ROW_REFUSED, "the row is the same as row 2"),
                        tuple(5L, "id", Effect.WARNING, "the id 'A2' is that of row 3 already"));
    }

    @Test
    void evidence_that_cannot_be_placed_costs_the_row() {
        Lot lot = Tables.bad("findings.csv");

        assertThat(lot.listings()).extracting(Listing::id).containsExactly("B7");
        assertThat(lot.faults())
                .extracting(IntakeFault::row, IntakeFault::column, IntakeFault::mend)
                .containsExactly(
                        tuple(2L, "present", "did you mean COLD_START_RATTLE?"),
                        tuple(3L, "present", "it belongs into the column found_failed"),
                        tuple(4L, "absent", "keep one of the two"),
                        tuple(5L, "drove_on", "did you mean OVERHEATING?"),
                        tuple(6L, "stopped_at_once", "keep one of the two"),
                        tuple(7L, "codes",
                                "write P, C, B or U, a digit 0 to 3 and three hexadecimal digits, such as P0016"),
                        tuple(8L, "codes", "it is kept and weighs nothing"));
        assertThat(lot.warnings().get(0).what()).contains("P1234", "maker's own");
    }

    @Test
    void damaged_cells_cost_their_own_row_only() {
        Lot lot = Tables.bad("cells.csv");

        assertThat(lot.listings()).extracting(Listing::id).containsExactly("C4", "C6", "C7");
        assertThat(lot.listings().get(1).story()).isEqualTo("two\nlines, one cell");
        assertThat(lot.listings().get(2).origin()).isEqualTo("cells.csv, row 9");
        assertThat(lot.faults())
                .extracting(IntakeFault::row, IntakeFault::column, IntakeFault::what)
                .containsExactly(
                        tuple(2L, "story", "the row has 6 cells and the header 7"),
                        tuple(3L, "", "the row has 8 cells and the header 7"),
                        tuple(4L, "story", "a quote is opened and never closed"),
                        tuple(6L, "story", "there is text after a closing quote"));
    }

    @Test
    void a_nul_costs_its_row() {
        Lot lot = Tables.bad("nul.csv");

        assertThat(lot.listings()).extracting(Listing::id).containsExactly("D2");
        assertThat(lot.faults()).extracting(IntakeFault::row).containsExactly(2L);
    }

    @Test
    void an_unknown_make_is_kept_with_a_warning() {
        Lot lot = Tables.bad("unknown_make.csv");

        assertThat(lot.listings()).hasSize(2);
        assertThat(lot.faults())
                .extracting(IntakeFault::row, IntakeFault::column, IntakeFault::effect, IntakeFault::mend)
                .containsExactly(
                        tuple(2L, "make", Effect.WARNING, "did you mean toyota?"),
                        tuple(3L, "make", Effect.WARNING, "see the spelling; the row is kept"));
    }

    @ParameterizedTest
    @CsvSource(delimiter = ';', value = {
        "engine; steam", "gearbox; crash", "timing; gears", "drive; sideways", "cylinders; many", "engine_l; 55",
        "vin; 1M8GDM9AXKP04278"
    })
    void a_descriptive_word_nobody_knows_is_a_warning(String column, String cell) {
        Lot lot = Tables.withColumn(column, cell);

        Tables.one(lot);
        assertThat(lot.faults()).singleElement().satisfies(f -> {
            assertThat(f.row()).isEqualTo(2);
            assertThat(f.column()).isEqualTo(column);
            assertThat(f.effect()).isEqualTo(Effect.WARNING);
        });
    }

    @Test
    void an_unknown_word_for_the_title_does_not_make_it_clean() {
        Lot lot = Tables.withColumn("title", "blue");

        assertThat(Tables.one(lot).listing().vehicle().title()).isEqualTo(TitleBrand.UNKNOWN);
        assertThat(lot.warnings()).hasSize(1);
    }

    @ParameterizedTest
    @CsvSource(delimiter = ';', value = {
        "tow_miles; far", "tow_miles; -1", "tow_miles; 20 km", "quote; lots", "currency; shells", "seen; 2026-13-01",
        "seen; 2026-02-30", "seen; 2027-01-01", "seen; -88.543", "seen; 23/06/2026", "currency; EURO?",
        "odometer_unit; leagues"
    })
    void a_figure_nobody_can_read_costs_the_row(String column, String cell) {
        Lot lot = Tables.withColumn(column, cell);

        assertThat(lot.entries()).isEmpty();
        assertThat(lot.faults()).singleElement().satisfies(f -> {
            assertThat(f.row()).isEqualTo(2);
            assertThat(List.of(column, "odometer")).contains(f.column());
            assertThat(f.effect()).isEqualTo(Effect.ROW_REFUSED);
        });
    }

    @Test
    void all_faults_of_a_row_are_told_at_once() {
        Lot lot = Tables.read(Tables.HEADER + ",present", "A1,x,ford,focus,y,z,NOTHING_LIKE_IT");

        assertThat(lot.faults()).extracting(IntakeFault::column)
                .containsExactlyInAnyOrder("year", "odometer", "price", "present");
        assertThat(lot.refused()).hasSize(1);
    }

    @Test
    void the_vin_is_compared_with_itself_and_with_the_year() {
        Lot lot = Tables.read(Tables.HEADER + ",vin", "A1,2004,honda,accord,90000,1500,1HGCM82633A004353");

        assertThat(lot.entries()).hasSize(1);
        assertThat(lot.faults()).filteredOn(f -> f.column().equals("vin")).extracting(IntakeFault::what)
                .containsExactly("the check digit does not hold", "the VIN says model year 2003, the table 2004");
    }

    @Test
    void a_missing_price_is_a_warning_and_the_car_is_kept() {
        Lot lot = Tables.read(Tables.HEADER, "A1,2012,ford,focus,90000,");

        assertThat(Tables.one(lot).listing().ask()).isEqualTo(Fact.unknown());
        assertThat(lot.warnings()).extracting(IntakeFault::column).containsExactly("price");
    }

    @Test
    void a_fault_reads_as_one_sentence() {
        Optional<IntakeFault> fault = Tables.bad("figures.csv").faults().stream().findFirst();

        assertThat(fault).hasValueSatisfying(f -> assertThat(f).hasToString(
                "figures.csv, row 2, column odometer: 'abc' is no odometer reading; "
                        + "write a plain number such as 98000, with mi or km after it if you like"));
    }
}
