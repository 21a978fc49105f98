package worthsaving.teardown;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.Reader;
import java.io.StringReader;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import worthsaving.catalog.Catalogue;
import worthsaving.catalog.ShippedCatalogue;
import worthsaving.quantity.Money;
import worthsaving.vehicle.Observation;

class JournalReaderTest {

    private static final Catalogue CATALOGUE = ShippedCatalogue.load();
    private static final String HEAD = "stage,kind,what,value,when\n";

    private static JournalReader.Reading read(String text) throws IOException {
        return JournalReader.read("j.csv", new StringReader(text), CATALOGUE, Money.USD);
    }

    @Test
    void the_sample_is_read_whole() throws IOException {
        try (Reader in = Files.newBufferedReader(Path.of("shared", "samples", "teardown_L01.csv"))) {
            JournalReader.Reading reading = JournalReader.read("teardown_L01.csv", in, CATALOGUE, Money.USD);
            assertThat(reading.faults()).isEmpty();
            Journal journal = reading.journal();
            assertThat(journal.entries()).hasSize(10);
            assertThat(journal.opened()).containsExactly("FRONT_COVER_OFF");
            assertThat(journal.hours().value()).isEqualTo(7);
            assertThat(journal.paid(Money.usd(0))).isEqualTo(Money.usd(540));
            assertThat(journal.observations()).contains(Observation.present("TIM_CHAIN_WORN"),
                    Observation.present("CODE_CAM_CRANK"));
        }
    }

    @ParameterizedTest
    @CsvSource(delimiter = ';', value = {
        "a,dance,x,1,;kind: 'dance' must be",
        "a,opened,ROOF_OFF,,;what: 'ROOF_OFF' is not an access step",
        "a,finding,NOPE,present,;what: 'NOPE' is not a finding",
        "a,finding,FILTER_METAL,maybe,;must be present, absent or unsure",
        "a,item,ENG_DEAD,present,;must be failed, sound or unsure",
        "a,hours,x,-1,;must be a number from 0",
        "a,hours,x,NaN,;must be a number from 0",
        "a,paid,x,2k,;must be a number from 0",
        "a,note,x,,yesterday;must be a day such as",
        "a,paid,x,1;has 4 cells instead of 5"
    })
    void a_bad_row_is_named_and_the_good_ones_stay(String row, String fault) throws IOException {
        JournalReader.Reading reading = read(HEAD + "a,paid,tow,100,\n" + row + "\nb,note,still here,,\n");
        assertThat(reading.journal().entries()).hasSize(2);
        assertThat(reading.faults()).hasSize(1);
        assertThat(reading.faults().get(0)).startsWith("j.csv, line 3").contains(fault);
    }

    @Test
    void a_table_without_the_columns_is_refused() throws IOException {
        assertThat(read("a,b\n1,2\n").faults().get(0)).contains("missing: stage, kind, what, value, when");
        assertThat(read("").faults()).hasSize(1);
        assertThat(read(HEAD + "a,note,\"open quote,,\n").faults()).isNotEmpty();
    }
}
