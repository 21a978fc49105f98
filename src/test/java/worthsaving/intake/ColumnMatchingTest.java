package worthsaving.intake;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.StringReader;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** Columns by name, by content and as told. All rows are invented. */
class ColumnMatchingTest {

    private static final String EUROPEAN = """
            Nr;Asking Price (EUR);km-Stand;Bj.;Marke;Modell;Fahrwerk
            1;1.234,56;210.000;2012;Opel;Astra;W0L0AHL3582012345
            2;2.400;98 000;2014;Ford;Focus;WF0AXXGCDA1234567
            """;

    private static Lot read(String text, TableColumns told) throws IOException {
        return new ListingReader(Tables.VOCABULARY, Tables.SETTINGS, told).read(new StringReader(text), "t.csv");
    }

    private static String why(Lot lot, String field) {
        return lot.summary().uses().stream().filter(u -> u.field().equals(field)).findFirst()
                .map(u -> u.column() + ": " + u.why()).orElse("");
    }

    @Test
    void european_headers_and_figures_are_understood() throws IOException {
        Lot lot = read(EUROPEAN, TableColumns.UNTOLD);

        assertThat(lot.summary().good()).as(lot.faults().toString()).isEqualTo(2);
        assertThat(lot.entries().get(0).listing().ask().get().orElseThrow().toString()).isEqualTo("EUR 1234.56");
        assertThat(lot.entries().get(0).listing().vehicle().odometer().get().orElseThrow().kilometres())
                .isEqualTo(210_000);
        assertThat(why(lot, "vin")).isEqualTo("Fahrwerk: its cells look like VINs");
        assertThat(why(lot, "odometer")).isEqualTo("km-Stand: its name");
    }

    @Test
    void a_near_name_counts_when_the_cells_agree() throws IOException {
        Lot lot = read("id,yeer,make,model,milage total,prise\n1,2012,ford,focus,90000,1500\n2,2013,ford,focus,80000,1600\n",
                TableColumns.UNTOLD);

        assertThat(lot.summary().good()).as(lot.faults().toString()).isEqualTo(2);
        assertThat(why(lot, "price")).contains("its name is near");
        assertThat(why(lot, "year")).contains("its cells look like years");
    }

    @Test
    void what_is_told_outweighs_names_and_a_column_can_be_left_alone() throws IOException {
        String text = "id,year,make,model,odometer,price,hammer,notes\n1,2012,ford,focus,90000,1500,700,x\n";
        ColumnChoice choice = ColumnChoice.told(Map.of("price", "Hammer"), List.of("notes"));

        Lot lot = read(text, new TableColumns(ColumnMemory.empty(), choice));

        assertThat(lot.entries().get(0).listing().ask().get().orElseThrow().amount()).isEqualTo(700);
        assertThat(why(lot, "price")).isEqualTo("hammer: as you told");
        assertThat(lot.summary().unusedColumns()).containsExactly("price", "notes");
    }

    @Test
    void a_wrong_word_refuses_the_table_with_a_hint() throws IOException {
        Lot lot = read(EUROPEAN, new TableColumns(ColumnMemory.empty(),
                ColumnChoice.told(Map.of("prise", "Nr", "title", "Markee"), List.of())));

        assertThat(lot.summary().readable()).isFalse();
        assertThat(lot.warnings().get(0).what()).contains("there is no field 'prise'; did you mean price?")
                .contains("the table has no column 'Markee'; did you mean Marke?");
    }

    @Test
    void what_was_told_is_remembered_by_the_header() throws IOException {
        List<String> header = List.of("id", "Year", "make", "model", "odometer", "price", "hammer");
        StringBuilder file = new StringBuilder();
        ColumnMemory.empty().with(header, ColumnChoice.told(Map.of("price", "hammer"), List.of("id"))).write(file);

        ColumnMemory again = ColumnMemory.read(new StringReader(file.toString()));
        Lot lot = read("ID,year,MAKE,model,odometer,price,Hammer\n1,2012,ford,focus,90000,1500,700\n",
                new TableColumns(again, ColumnChoice.NONE));

        assertThat(why(lot, "price")).isEqualTo("Hammer: remembered of an earlier table with this header");
        assertThat(lot.entries().get(0).listing().ask().get().orElseThrow().amount()).isEqualTo(700);
        assertThat(again.of(List.of("another"))).isEmpty();
    }
}
