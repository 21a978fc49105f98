package worthsaving.desktop.lot;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import worthsaving.deal.Verdict;

class LotColumnTest {

    private final List<LotRow> rows = Rows.three();

    @ParameterizedTest
    @CsvSource({"RANK,2", "VERDICT,Offer less", "CAR,2010 Ford Focus SE", "ASK,'1,002'", "MOST,'1,200'",
            "PROFIT,\u221250",
        "LOSS,20 %", "HOURS,12", "DAYS,33", "LIKELY,'Head gasket; Water pump'", "CHECK,none worth its cost",
        "OUTCOME,'9 times in 10 between \u2212950 and 850'"})
    void texts_of_a_row(LotColumn column, String text) {
        assertThat(column.text(rows.get(1))).isEqualTo(text);
    }

    @ParameterizedTest
    @CsvSource({"VERDICT,Walk away", "PROFIT,0", "LOSS,20 %", "HOURS,12", "DAYS,33"})
    void a_car_not_worth_buying_shows_how_far_off_it_is(LotColumn column, String text) {
        assertThat(column.text(rows.get(2))).isEqualTo(text);
    }

    @Test
    void a_cell_shows_the_likeliest_and_how_many_more() {
        assertThat(LotColumn.LIKELY.brief(rows.get(1))).isEqualTo("Head gasket +1");
        assertThat(LotColumn.CHECK.brief(rows.get(1))).isEqualTo(LotColumn.CHECK.text(rows.get(1)));
    }

    @Test
    void figures_are_sorted_as_numbers_and_names_as_words() {
        assertThat(sorted(LotColumn.PROFIT)).containsExactly("B", "C", "A");
        assertThat(sorted(LotColumn.CAR)).containsExactly("C", "B", "A");
        assertThat(sorted(LotColumn.VERDICT)).containsExactly("A", "B", "C");
    }

    @Test
    void copied_rows_are_tab_separated_with_a_header_and_no_formula() {
        LotRow sly = Rows.row(4, "=1+1", "ka", Verdict.Kind.BUY, -50, "");
        String text = RowsAsText.of(List.of(rows.get(0), sly), List.of(LotColumn.CAR, LotColumn.PROFIT));
        assertThat(text.lines()).containsExactly(
                "id\tCar\tExpected profit", "A\t2010 Ford Ranger\t1,500", "'=1+1\t2010 Ford KA\t-50");
    }

    private List<String> sorted(LotColumn column) {
        return Stream.of(rows.get(2), rows.get(0), rows.get(1)).sorted(column.order()).map(r -> r.listing().id())
                .toList();
    }
}
