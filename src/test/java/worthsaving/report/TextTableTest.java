package worthsaving.report;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import org.junit.jupiter.api.Test;

class TextTableTest {

    @Test
    void lines_up_text_left_and_numbers_right() throws IOException {
        TextTable table = new TextTable().left("car").right("ask").left("why", 8);
        table.row("2012 ford focus", 1500, "short").row("kia", 12, "much longer than that").row("x", null, null);

        assertThat(text(table)).isEqualTo("""
                car               ask  why
                ---------------  ----  --------
                2012 ford focus  1500  short
                kia                12  much lo\u2026
                x
                """);
    }

    @Test
    void counts_wide_and_combining_characters_as_a_terminal_does() throws IOException {
        TextTable table = new TextTable().left("a").left("b");
        table.row("\u4e2d\u6587", "x").row("a\u0308bcd", "x").row("\ud83d\ude97  ", "x");

        assertThat(text(table).lines().skip(2).map(l -> l.substring(l.length() - 3))).containsOnly("  x");
        assertThat(text(table).lines().skip(1).findFirst()).contains("----  -");
    }

    /** An advert must not be able to steer the terminal it is shown in. */
    @Test
    void takes_out_what_steers_a_terminal() {
        assertThat(TextTable.plain("a\u001b[2Jb\u202ec\u0007d\ne\tf\ud800g")).isEqualTo("a[2Jbcd e fg");
    }

    @Test
    void refuses_a_row_of_another_width() {
        assertThatThrownBy(() -> new TextTable().left("a").row(1, 2)).hasMessageContaining("1 cells");
    }

    private static String text(TextTable table) throws IOException {
        StringBuilder out = new StringBuilder();
        table.write(out);
        return out.toString();
    }
}
