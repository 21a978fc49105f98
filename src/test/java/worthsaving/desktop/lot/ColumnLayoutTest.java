package worthsaving.desktop.lot;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class ColumnLayoutTest {

    @Test
    void what_was_written_is_read_back() {
        List<ColumnLayout.Shown> columns = new ArrayList<>();
        for (LotColumn column : LotColumn.values()) {
            columns.add(new ColumnLayout.Shown(column, 4.5 + column.ordinal(), column != LotColumn.DAYS));
        }
        Collections.reverse(columns);
        ColumnLayout layout = new ColumnLayout(columns, Optional.of(new ColumnLayout.Sorting(LotColumn.ASK, false)));
        assertThat(ColumnLayout.parse(layout.toText())).isEqualTo(layout);
    }

    @ParameterizedTest
    @ValueSource(strings = {"", ";;;", "NONSENSE:12:shown", "CAR:wide:shown", "<NONSENSE", "CAR", "RANK:1e99:shown"})
    void what_cannot_be_read_is_the_usual(String text) {
        assertThat(ColumnLayout.parse(text)).isEqualTo(ColumnLayout.usual());
    }

    @Test
    void columns_unknown_to_an_older_layout_come_last_and_none_comes_twice() {
        ColumnLayout layout = ColumnLayout.parse("CAR:100:shown;RANK:30:hidden;CAR:50:shown;>CAR");
        assertThat(layout.columns()).hasSize(LotColumn.values().length);
        assertThat(layout.columns().get(0)).isEqualTo(new ColumnLayout.Shown(LotColumn.CAR, 100, true));
        assertThat(layout.columns().get(1).visible()).isFalse();
        assertThat(layout.sorting()).contains(new ColumnLayout.Sorting(LotColumn.CAR, false));
    }
}
