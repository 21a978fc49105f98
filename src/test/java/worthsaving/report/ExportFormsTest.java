package worthsaving.report;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import worthsaving.quantity.Seed;

/** Tab-separated values and Markdown tables, which end up in spreadsheets too. */
class ExportFormsTest {

    /**
     * The two worked cells of OWASP (www-community, pages/attacks/CSV_Injection.md, commit 0e5e8f0); a format without
     * quotes needs none doubled. The rest is derived from its list of first characters = + - @ tab CR LF.
     */
    @Test
    void tsv_neutralises_as_owasp_asks() throws IOException {
        assertThat(tsv("=1+2\";=1+2")).isEqualTo("'=1+2\";=1+2");
        assertThat(tsv("=1+2'\" ;,=1+2")).isEqualTo("'=1+2'\" ;,=1+2");
        assertThat(tsv("+1 555 0100")).isEqualTo("'+1 555 0100");
        assertThat(tsv("@SUM(A1)")).isEqualTo("'@SUM(A1)");
        assertThat(tsv("\t=1+1")).isEqualTo("' =1+1");
        assertThat(tsv("\n=1")).isEqualTo("' =1");
        assertThat(tsv("\r=1")).isEqualTo("' =1");
        assertThat(tsv(-1200)).isEqualTo("-1200");
        assertThat(tsv(-1200.0)).isEqualTo("-1200");
        assertThat(tsv("-1200")).isEqualTo("'-1200");
    }

    /** A spreadsheet takes quotes off a cell and then sees a formula; our own caution. */
    @Test
    void tsv_neutralises_a_cell_in_quotes() throws IOException {
        assertThat(tsv("\"=1+1\"")).isEqualTo("'\"=1+1\"");
    }

    @Test
    void tsv_keeps_one_row_on_one_line() throws IOException {
        assertThat(tsv("a\tb\nc\u2028d")).isEqualTo("a b c d");
        assertThat(tsv(new Object[] {null})).isEmpty();
        assertThatThrownBy(() -> tsv(Double.POSITIVE_INFINITY)).hasMessageContaining("Infinity");
        assertThatThrownBy(() -> new TsvWriter(new StringBuilder(), "a").row(1, 2)).hasMessageContaining("1 cells");
    }

    @Test
    void any_text_stays_one_safe_cell() throws IOException {
        SplittableRandom random = Seed.DEFAULT.derive("tsv writer").generator();
        String alphabet = "=+-@\t\r\n\0 \"';ab|\\<\uff1d";
        for (int i = 0; i < 5_000; i++) {
            StringBuilder text = new StringBuilder();
            for (int k = random.nextInt(8); k > 0; k--) {
                text.append(alphabet.charAt(random.nextInt(alphabet.length())));
            }
            for (String cell : new String[] {tsv(text), markdown(text.toString())}) {
                assertThat(cell).doesNotContain("\t", "\n", "\r");
                assertThat(cell.strip()).doesNotStartWith("=").doesNotStartWith("+").doesNotStartWith("-")
                        .doesNotStartWith("@");
            }
            assertThat(tsv(text).strip()).doesNotStartWith("\"");
        }
    }

    /** As the rows for CSV; escapes by CommonMark 0.31, 2.4. */
    @ParameterizedTest
    @CsvSource(delimiter = '^', quoteCharacter = '`', value = {
        "=1+2 ^ '=1+2", "+1 555 0100 ^ '+1 555 0100", "@SUM(A1) ^ '@SUM(A1)", "a|b ^ a\\|b",
        "<b>x</b> ^ \\<b\\>x\\</b\\>", "*x* _y_ ^ \\*x\\* \\_y\\_", "[x](y) ^ \\[x\\](y)", "2012 ford ^ 2012 ford"
    })
    void markdown_cells_mean_themselves(String text, String written) throws IOException {
        assertThat(markdown(text)).isEqualTo(written);
    }

    @ParameterizedTest
    @ValueSource(strings = {"-1,200", "12 %", "-", "0.5"})
    void markdown_leaves_figures_alone(String figure) throws IOException {
        StringBuilder out = new StringBuilder();
        new TextTable().right("n").row(figure).markdown(out);

        assertThat(out.toString()).isEqualTo("| n |\n| ---: |\n| " + figure + " |\n");
    }

    @Test
    void markdown_prose_does_not_begin_a_list_or_a_heading_by_accident() {
        assertThat(Markdown.text("- x")).isEqualTo("\\- x");
        assertThat(Markdown.text("1. x")).isEqualTo("1\\. x");
        assertThat(Markdown.text("# x")).isEqualTo("\\# x");
        assertThat(Markdown.text("=====")).isEqualTo("\\=====");
        assertThat(Markdown.text("2012. Ford")).isEqualTo("2012\\. Ford");
        assertThat(Markdown.text("plain 1.5")).isEqualTo("plain 1.5");
    }

    private static String tsv(Object... cells) throws IOException {
        StringBuilder out = new StringBuilder();
        new TsvWriter(out, "c").row(cells);
        return out.substring(2, out.length() - 1);
    }

    private static String markdown(String cell) throws IOException {
        StringBuilder out = new StringBuilder();
        new TextTable().left("c").row(cell).markdown(out);
        String line = out.toString().lines().skip(2).reduce((a, b) -> a + "\n" + b).orElse("");
        return line.substring(2, line.length() - 2);
    }
}
