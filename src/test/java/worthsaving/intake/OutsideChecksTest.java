package worthsaving.intake;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.Test;

/** Trouble codes against the collected outside values; each row of those names its source. */
class OutsideChecksTest {

    private static final Pattern TWO_BYTES = Pattern.compile("two bytes 0x([0-9A-F]{4})");

    @Test
    void two_bytes_decode_as_published() throws IOException {
        List<CSVRecord> rows = OutsideFiles.rows("checks/checks.csv").stream()
                .filter(r -> r.get("id").startsWith("DTC-") && r.get("input").startsWith("two bytes"))
                .toList();

        assertThat(rows).hasSize(6).allSatisfy(row -> {
            Matcher bytes = TWO_BYTES.matcher(row.get("input"));
            assertThat(bytes.matches()).isTrue();
            assertThat(TroubleCode.ofBytes(Integer.parseInt(bytes.group(1), 16)).text())
                    .as("%s, source: %s", row.get("id"), row.get("source"))
                    .isEqualTo(row.get("expected"));
        });
    }

    @Test
    void generic_codes_are_the_standards() throws IOException {
        List<CSVRecord> rows = OutsideFiles.rows("checks/dtc_generic.csv");

        assertThat(rows).hasSizeGreaterThan(30).allSatisfy(row ->
                assertThat(new TroubleCode(row.get("code")).definedBy())
                        .as(row.get("code"))
                        .isEqualTo(TroubleCode.DefinedBy.STANDARD));
    }
}
