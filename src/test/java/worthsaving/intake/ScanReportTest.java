package worthsaving.intake;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.Reader;
import java.io.StringReader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import org.assertj.core.api.Assertions;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import worthsaving.vehicle.Observation;
import worthsaving.vehicle.Observation.Sight;

/** Scan reports are invented; the layout of status words is common practice, no source. */
class ScanReportTest {

    private static String told(ScanReport report) {
        return report.codes().stream().map(c -> c.code() + " " + c.status().name().toLowerCase(java.util.Locale.ROOT))
                .collect(Collectors.joining(", "));
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {
        "P0016 | P0016 stored",
        "codes p0016, P0300;U0100 | P0016 stored, P0300 stored, U0100 stored",
        "P0300 pending P0301 confirmed | P0300 pending, P0301 stored",
        "Pending: P0300 P0301, stored: P0171 | P0300 pending, P0301 pending, P0171 stored",
        "C0035-00 history | C0035 history",
        "P0420:00 - permanent DTC | P0420 permanent",
        "PO3O0 | P0300 stored",
        "P0016 pending. P0016 confirmed | P0016 stored",
        "P0401 test ok | P0401 passed",
        "part no XP0300 and P03001 and 2P0300 | ''"
    })
    void finds_codes_and_what_the_tool_says_of_each(String text, String expected) {
        assertThat(told(ScanReport.read(text))).isEqualTo(expected);
    }

    @Test
    void a_heading_counts_until_a_blank_line() {
        ScanReport report = ScanReport.read("""
                Vehicle scan, invented
                Pending codes
                  P0300  random misfire
                  P0302

                ECM
                P0016 correlation
                History
                U0100
                """);

        assertThat(told(report)).isEqualTo("P0300 pending, P0302 pending, P0016 stored, U0100 history");
        assertThat(report.codes()).extracting(ReadCode::line).containsExactly(3, 4, 7, 9);
    }

    @Test
    void a_letter_o_read_as_a_nought_is_noted() {
        assertThat(ScanReport.read("\nPO420").notes()).containsExactly("line 2: 'PO420' was read as P0420");
    }

    @Test
    void only_a_confirmed_fault_is_sure() {
        Vocabulary vocabulary = new Vocabulary(Set.of("A", "B"), Set.of(),
                Map.of("P0300", List.of("A"), "P0301", List.of("A"), "P0420", List.of("B")), Set.of());

        assertThat(ScanReport.read("P0300 pending, P0301 stored, P0420 history").observations(vocabulary))
                .extracting(Observation::subject, Observation::sight)
                .containsExactly(Assertions.tuple("A", Sight.PRESENT), Assertions.tuple("B", Sight.UNSURE));
        assertThat(ScanReport.read("P0300 passed").observations(vocabulary)).isEmpty();
    }

    @Test
    void the_codes_column_takes_a_status() {
        LotEntry entry = Tables.one(Tables.withColumn("codes", "P0300 (pending) P0217"));

        assertThat(entry.codes()).extracting(ReadCode::status)
                .containsExactly(ReadCode.Status.PENDING, ReadCode.Status.STORED);
        assertThat(entry.listing().observations()).extracting(Observation::subject, Observation::sight)
                .containsExactlyInAnyOrder(Assertions.tuple("CODE_MISFIRE", Sight.UNSURE),
                        Assertions.tuple("OVERHEATS", Sight.PRESENT));
        assertThat(Tables.withColumn("codes", "P0300 maybe").refused()).hasSize(1);
    }

    private static CodeTable shipped() throws IOException {
        try (Reader in = Files.newBufferedReader(Path.of("shared/vocabulary", CodeTable.FILE))) {
            return CodeTable.read(in);
        }
    }

    @ParameterizedTest
    @CsvSource({
        "P0312, CODE_MISFIRE", "P0345, CODE_POSITION_SENSOR", "P2188, ''", "U0155, CODE_NETWORK", "P0325, ''",
        "C0040, ABS_LAMP", "B0012, AIRBAG_LIGHT", "P1345, ''", "U1100, ''", "P3000, ''"
    })
    void ranges_stand_for_findings_and_the_makers_own_for_none(String code, String finding) throws IOException {
        assertThat(shipped().row(new TroubleCode(code)).flatMap(CodeTable.Row::finding).orElse(""))
                .isEqualTo(finding);
    }

    @Test
    void faults_of_the_table_are_all_listed() {
        StringReader bad = new StringReader("first,last,finding,meaning,label\nP0300,P0200,A,m,l\nX1,,B,m,l\n"
                + "P0100,U0100,C,m,l\nP0001,P0002\n");

        Assertions.assertThatThrownBy(() -> CodeTable.read(bad)).isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("line 2").hasMessageContaining("line 3").hasMessageContaining("line 4")
                .hasMessageContaining("line 5");
    }
}
