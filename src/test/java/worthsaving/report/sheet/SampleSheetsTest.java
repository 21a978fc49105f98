package worthsaving.report.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Every sample car as every kind of sheet. */
class SampleSheetsTest {

    static Stream<DecisionSheet> sheets() {
        return SampleSheets.all().stream();
    }

    @Test
    void there_is_a_sheet_of_each_kind_for_each_car_and_a_quote_for_nearly_all() {
        long cars = count(Audience.FLIPPER);

        assertThat(cars).isGreaterThanOrEqualTo(25);
        assertThat(count(Audience.OWNER)).isEqualTo(cars);
        assertThat(count(Audience.WORKSHOP)).isBetween(cars * 9 / 10, cars);
    }

    private static long count(Audience audience) {
        return sheets().filter(s -> s.audience() == audience).count();
    }

    @ParameterizedTest
    @MethodSource("sheets")
    void is_one_page_of_selectable_text_within_its_margins(DecisionSheet sheet) throws IOException {
        for (PdfSheet.Paper paper : PdfSheet.Paper.values()) {
            Pdf pdf = Pdf.of(sheet, paper);

            assertThat(pdf.pages()).isOne();
            assertThat(pdf.text()).contains(sheet.title(), sheet.headline(), DecisionSheet.ADVICE,
                    sheet.provenance().words(), "prepared 2025-11-25");
            sheet.figures().forEach(f -> assertThat(pdf.text()).contains(f.value()));
            assertThat(pdf.outside()).isEmpty();
        }
    }

    /** Every mark, so pictures and lines too, not only the text that a reader finds. */
    @ParameterizedTest
    @MethodSource("sheets")
    void puts_no_mark_outside_its_column(DecisionSheet sheet) {
        List<Mark> marks = PageComposer.compose(PageFit.to(sheet, PageComposer.HEIGHT)).marks();

        assertThat(marks).allSatisfy(mark -> {
            double[] box = Boxes.of(mark);
            assertThat(box[0]).isGreaterThanOrEqualTo(-0.01);
            assertThat(box[1]).isGreaterThanOrEqualTo(-0.01);
            assertThat(box[2]).isLessThanOrEqualTo(PageComposer.WIDTH + 0.6);
            assertThat(box[3]).isLessThanOrEqualTo(PageComposer.HEIGHT + 0.01);
        });
    }

    @ParameterizedTest
    @MethodSource("sheets")
    void keeps_the_first_caution_and_says_what_it_left_out(DecisionSheet sheet) {
        DecisionSheet fitted = PageFit.to(sheet, PageComposer.HEIGHT);

        assertThat(fitted.cautions().size()).isGreaterThanOrEqualTo(Math.min(3, sheet.cautions().size()));
        assertThat(fitted.cautions().size() + fitted.cautions().omitted()).isEqualTo(sheet.cautions().size());
        for (int i = 0; i < sheet.sections().size(); i++) {
            Section whole = sheet.sections().get(i);
            Section part = fitted.sections().get(i);
            assertThat(part.size() + part.omitted()).isEqualTo(whole.size());
            assertThat(part.omitted()).isNotEqualTo(1);
            assertThat(part.rest().isEmpty()).isEqualTo(part.omitted() == 0);
        }
    }
}
