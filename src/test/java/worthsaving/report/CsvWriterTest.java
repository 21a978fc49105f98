package worthsaving.report;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.util.List;
import java.util.SplittableRandom;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import worthsaving.quantity.Seed;

class CsvWriterTest {

    /** Source: OWASP www-community, pages/attacks/CSV_Injection.md, commit 0e5e8f0, the two worked cells. */
    @Test
    void neutralises_as_owasp_writes_it() throws IOException {
        assertThat(line("=1+2\";=1+2")).isEqualTo("\"'=1+2\"\";=1+2\"");
        assertThat(line("=1+2'\" ;,=1+2")).isEqualTo("\"'=1+2'\"\" ;,=1+2\"");
    }

    /** Derived from the list of OWASP (= + - @ tab CR LF, full-width forms); NUL from OWASP ASVS 1.2.10. */
    @ParameterizedTest
    @ValueSource(strings = {
        "+1 555 0100",
        "\t=1+1", "@SUM(A1)", "\n=1", "\r=1", "-1200", "=HYPERLINK(\"x\")", "\0=1", "\uff1d1+1", "  =1+1",
        "\u00a0@x", "-"
    })
    void text_that_a_spreadsheet_would_run_gets_a_quote(String text) throws IOException {
        assertThat(parsed(line(text))).containsExactly("'" + text);
    }

    @ParameterizedTest
    @ValueSource(strings = {"a=b", "1-2", "", "x@y", "'=1", "2012 ford", " plain", "\u00e4\u4e2d"})
    void other_text_stays_as_it_is(String text) throws IOException {
        assertThat(parsed(line(text))).containsExactly(text);
    }

    /** Own policy: a number is a number, so that exports can be added up. */
    @ParameterizedTest
    @CsvSource({
        "-1200, -1200", "0.5, 0.5", "12345678.9, 12345678.9", "1e-7, 0.0000001", "3e10, 30000000000", "-0.0, 0"
    })
    void numbers_stay_numbers(double value, String written) throws IOException {
        assertThat(line(value)).isEqualTo(written);
    }

    @Test
    void whole_numbers_and_blanks() throws IOException {
        assertThat(line(-1200)).isEqualTo("-1200");
        assertThat(line(new Object[] {null})).isEmpty();
    }

    @Test
    void refuses_what_no_cell_can_hold() {
        assertThatThrownBy(() -> line(Double.NaN)).hasMessageContaining("NaN");
        assertThatThrownBy(() -> new CsvWriter(new StringBuilder(), "a", "b").row(1)).hasMessageContaining("2 cells");
    }

    /** Whatever is written, no cell starts a formula, and the text comes back but for the quote. */
    @Test
    void any_text_is_safe_and_comes_back() throws IOException {
        SplittableRandom random = Seed.DEFAULT.derive("csv writer").generator();
        String alphabet = "=+-@\t\r\n\0 ,;\"'ab1\uff1d";
        for (int i = 0; i < 5_000; i++) {
            StringBuilder text = new StringBuilder();
            for (int k = random.nextInt(8); k > 0; k--) {
                text.append(alphabet.charAt(random.nextInt(alphabet.length())));
            }
            String cell = parsed(line(text)).get(0);
            assertThat(cell).endsWith(text.toString());
            assertThat(cell.stripLeading()).doesNotStartWith("=").doesNotStartWith("+").doesNotStartWith("-")
                    .doesNotStartWith("@");
            assertThat(cell.length() - text.length()).isBetween(0, 1);
        }
    }

    private static String line(Object... cells) throws IOException {
        StringBuilder out = new StringBuilder();
        new CsvWriter(out, "c").row(cells);
        return out.substring(out.indexOf("\n") + 1, out.length() - 1);
    }

    private static List<String> parsed(String line) throws IOException {
        CSVFormat keepBlanks = CSVFormat.RFC4180.builder().setIgnoreEmptyLines(false).get();
        try (CSVParser parser = CSVParser.parse(line + "\n", keepBlanks)) {
            return parser.stream().map(CSVRecord::toList).findFirst().orElseThrow();
        }
    }
}
