package worthsaving.report.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.util.Collections;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import worthsaving.quantity.Seed;

/** Sheets whose text nobody would write but somebody will paste. */
class HostileSheetTest {

    private static DecisionSheet saying(String text, int rows) {
        DecisionSheet s = SampleSheets.of(Audience.FLIPPER);
        List<String> lines = Collections.nCopies(rows, text);
        List<Section> sections = List.of(new Section.Table("t", Section.Importance.DECIDES,
                List.of(Section.Column.text(text), Section.Column.number("n")),
                lines.stream().map(l -> List.of(l, l)).toList(), text, 0),
                Section.Lines.of(text, Section.Importance.BACKGROUND, lines));
        Section.Lines all = Section.Lines.of("h", Section.Importance.SAFETY, lines);
        return new DecisionSheet(s.audience(), text, text, s.tone(), text, text, s.figures(), all, s.chart(),
                sections, all, all, List.of(), List.of(text), s.provenance());
    }

    @ParameterizedTest
    @ValueSource(strings = {
        "\u0160koda \u017divot \u0141\u00f3d\u017a", "\u041c\u043e\u0441\u043a\u0432\u0438\u0447 2141",
        "\u4e2d\u6587 car", "\ud83d\ude97 emoji", "e\u0301 combining", "\u05d0\u05d1\u05d2", "\ufb01rst of\ufb01ce",
        "\u202eright to left", "tab\tnew\nline\u0000nul", "", " ", "\ud800 lone", "<script>alert(1)</script>",
        "affine first ffl fi"
    })
    void unusual_letters_do_not_stop_a_sheet(String text) throws IOException {
        Pdf pdf = Pdf.of(saying(text, 3), PdfSheet.Paper.A4);
        StringBuilder html = new StringBuilder();
        HtmlSheet.write(saying(text, 3), html);

        assertThat(pdf.pages()).isOne();
        assertThat(pdf.outside()).isEmpty();
        assertThat(html.toString()).endsWith("</html>\n");
    }

    @Test
    void letters_of_the_typeface_come_back_as_they_are_and_others_as_a_box() throws IOException {
        assertThat(Pdf.of(saying("\u0160koda \u041c\u043e\u0441\u043a\u0432\u0438\u0447 first office", 1),
                PdfSheet.Paper.LETTER).text()).contains("\u0160koda \u041c\u043e\u0441\u043a\u0432\u0438\u0447 first office");
        assertThat(Typeface.get().showable("a\u4e2db")).isEqualTo("a\u25a1b");
        assertThat(Typeface.get().showable("\uff21\uff22")).isEqualTo("AB");
    }

    @Test
    void any_amount_of_text_still_is_one_page() throws IOException {
        SplittableRandom random = Seed.DEFAULT.derive("hostile sheet").generator();
        for (int i = 0; i < 12; i++) {
            StringBuilder text = new StringBuilder();
            for (int k = random.nextInt(600); k > 0; k--) {
                text.appendCodePoint(random.nextInt(5) == 0 ? ' ' : random.nextInt(0x3000));
            }
            Pdf pdf = Pdf.of(saying(text.toString(), random.nextInt(60)), PdfSheet.Paper.LETTER);

            assertThat(pdf.pages()).isOne();
            assertThat(pdf.outside()).isEmpty();
        }
    }

    @Test
    void html_has_no_script_no_link_and_no_text_taken_for_markup() throws IOException {
        StringBuilder out = new StringBuilder();
        HtmlSheet.write(saying("</style><img src=x onerror='a' \"b\"> & <script>", 2), out);
        String html = out.toString();

        assertThat(html).doesNotContain("<script", "<img", "http://", "https://", "url(", "@import", "onerror='a'")
                .contains("&lt;script&gt;", "&#39;a&#39;", "&quot;b&quot;", "default-src 'none'");
    }
}
