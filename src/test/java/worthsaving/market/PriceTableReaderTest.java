package worthsaving.market;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.io.StringReader;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

class PriceTableReaderTest {

    private static final String SHAPE = """
            name = Invented adverts
            market = DE
            currency = EUR
            odometer-unit = kilometres
            price-kind = asking
            source = invented for this test
            licence = none needed
            column.price = euro
            column.make = maker
            column.model = type
            column.year = built
            column.odometer = km
            column.fuel = fuel
            column.date = day
            word.fuel.benzin = gas
            """;

    private static DatasetShape shape() throws IOException {
        return DatasetShape.read(new StringReader(SHAPE), "test.properties");
    }

    private static PriceTable read(String csv) throws IOException {
        return PriceTableReader.read(new StringReader(csv), shape());
    }

    @Test
    void reads_units_words_and_gaps() throws IOException {
        PriceRow row = read("""
                euro,maker,type,built,km,fuel,day,extra
                2500, Alpha ,Wagon,2004,160934.4,Benzin,2016-03-07,x
                """).rows().get(0);

        assertThat(row.price()).isEqualTo(2500);
        assertThat(row.make()).isEqualTo("alpha");
        assertThat(row.model()).isEqualTo("wagon");
        assertThat(row.fuel()).isEqualTo("gas");
        assertThat(row.miles()).isCloseTo(100_000, within(1e-6));
        assertThat(row.litres()).isNaN();
        assertThat(row.date()).isEqualTo(LocalDate.of(2016, 3, 7));
        assertThat(row.line()).isEqualTo(2);
    }

    @Test
    void lists_bad_rows_with_line_column_and_reason_and_keeps_the_rest() throws IOException {
        PriceTable table = read("""
                euro,maker,type,built,km,fuel,day
                abc,alpha,wagon,2004,1000,gas,2016-03-07
                -5,alpha,wagon,2004,1000,gas,2016-03-07
                0,alpha,wagon,2004,1000,gas,2016-03-07
                2500,alpha,wagon,2004,many,gas,2016-03-07
                2500,alpha,wagon,2004,1000,gas,yesterday
                2500,alpha
                2500,alpha,wagon,2004,1000,gas,2016-03
                """);

        assertThat(table.rows()).hasSize(1);
        assertThat(table.rows().get(0).date()).isEqualTo(LocalDate.of(2016, 3, 15));
        assertThat(table.badCount()).isEqualTo(6);
        assertThat(table.badRows()).extracting(BadRow::line).containsExactly(2L, 3L, 4L, 5L, 6L, 7L);
        assertThat(table.badRows().get(0).toString()).isEqualTo(
                "line 2, column euro: 'abc' is not a number of zero or more");
        assertThat(table.badRows()).extracting(BadRow::column).contains("km", "day");
    }

    @Test
    void a_header_without_a_mapped_column_is_refused_by_name() {
        assertThatThrownBy(() -> read("euro,maker\n1,a\n"))
                .hasMessageContaining("the header has no column [built, day, fuel, km, type]");
    }

    @Test
    void an_empty_table_has_no_rows_and_an_empty_file_no_header() throws IOException {
        assertThat(read("euro,maker,type,built,km,fuel,day\n").rows()).isEmpty();
        assertThatThrownBy(() -> read("")).hasMessageContaining("the header has no column");
    }

    @Test
    void joins_columns_that_make_one_field_together() throws IOException {
        DatasetShape joined = DatasetShape.read(
                new StringReader(SHAPE.replace("column.model = type", "column.model = type + trim")), "joined");
        String header = "euro,maker,type,built,km,fuel,day,trim\n";
        String car = "2500,alpha,Wagon,2004,1000,gas,2016-03-07";
        PriceTable table = PriceTableReader.read(
                new StringReader(header + car + ",LX\n" + car + ",\n" + car + "\n"), joined);

        assertThat(table.rows()).extracting(PriceRow::model).containsExactly("wagon lx", "wagon");
        assertThat(table.badRows()).extracting(BadRow::column).containsExactly("type + trim");
        assertThatThrownBy(() -> PriceTableReader.read(new StringReader(header.replace(",trim", "")), joined))
                .hasMessageContaining("the header has no column [trim]");
    }

    @Test
    void further_columns_are_kept_as_words_under_the_names_of_the_mapping() throws IOException {
        DatasetShape shape = DatasetShape.read(
                new StringReader(SHAPE + "feature.seats = places\nfeature.paint = colour + finish\n"), "features");
        String header = "euro,maker,type,built,km,fuel,day,places,colour,finish\n";
        PriceTable table = PriceTableReader.read(new StringReader(header
                + "2500,alpha,wagon,2004,1000,gas,2016-03-07,5,Blue,Metallic\n2500,alpha,wagon,2004,1000,gas,2016-03-07\n"),
                shape);

        assertThat(table.rows()).singleElement().satisfies(row -> assertThat(row.features())
                .containsExactly(Map.entry("paint", "blue metallic"), Map.entry("seats", "5")));
        assertThat(table.badRows()).extracting(BadRow::column).containsExactly("colour + finish");
        assertThatThrownBy(() -> PriceTableReader.read(new StringReader(header.replace(",finish", "")), shape))
                .hasMessageContaining("the header has no column [finish]");
    }

    @Test
    void streaming_hands_on_every_row_and_keeps_only_so_many_bad_ones() throws IOException {
        StringBuilder csv = new StringBuilder("euro,maker,type,built,km,fuel,day\n");
        for (int i = 0; i < 3000; i++) {
            csv.append(i % 2 == 0 ? "x" : "900").append(",alpha,wagon,2004,1000,gas,2016-03-07\n");
        }
        List<PriceRow> rows = new ArrayList<>();
        PriceTable table = PriceTableReader.stream(new StringReader(csv.toString()), shape(), rows::add);

        assertThat(rows).hasSize(1500);
        assertThat(table.rows()).isEmpty();
        assertThat(table.badCount()).isEqualTo(1500);
        assertThat(table.badRows()).hasSize(1000);
    }

    @Test
    void a_mapping_lists_every_fault_at_once() {
        String bad = SHAPE.replace("market = DE", "").replace("column.fuel", "column.fule");

        assertThatThrownBy(() -> DatasetShape.read(new StringReader(bad), "bad.properties"))
                .hasMessageContaining("bad.properties")
                .hasMessageContaining("'market' is missing")
                .hasMessageContaining("'column.fule' names no known field");
    }

    @Test
    void matches_the_columns_of_a_users_table_by_name() throws IOException {
        String names = "field,header\nprice,asking price\nmake,manufacturer\nodometer,mileage\nodometer,odometer\n";
        ColumnMatch match = ColumnMatch.of(
                List.of("Asking Price (EUR)", "Manufacturer", "Odometer_km", "Mileage", "Colour"),
                new StringReader(names));

        assertThat(match.columns())
                .containsEntry(Field.PRICE, "Asking Price (EUR)")
                .containsEntry(Field.MAKE, "Manufacturer")
                .containsEntry(Field.ODOMETER, "Odometer_km")
                .hasSize(3);
        assertThat(match.ignored()).containsExactly("Mileage", "Colour");
    }
}
