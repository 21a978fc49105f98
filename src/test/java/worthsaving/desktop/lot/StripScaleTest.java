package worthsaving.desktop.lot;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import worthsaving.deal.Verdict;

class StripScaleTest {

    @Test
    void it_spans_all_rows_and_zero() {
        StripScale scale = StripScale.of(Rows.three());
        assertThat(scale).isEqualTo(new StripScale(-950, 2_400));
        assertThat(scale.at(-950)).isZero();
        assertThat(scale.at(2_400)).isEqualTo(1);
        assertThat(scale.at(9_999)).isEqualTo(1);
    }

    @Test
    void one_extreme_car_in_many_does_not_flatten_the_others() {
        List<LotRow> rows = new ArrayList<>();
        for (int i = 0; i < 39; i++) {
            rows.add(Rows.row(i, "R" + i, "ka", Verdict.Kind.BUY, 500, ""));
        }
        rows.add(Rows.row(39, "X", "ka", Verdict.Kind.BUY, 50_000, ""));
        assertThat(StripScale.of(rows).high()).isEqualTo(1_400);
    }

    @Test
    void without_rows_there_is_still_an_axis() {
        assertThat(StripScale.of(List.of()).at(0)).isEqualTo(0.5);
    }
}
