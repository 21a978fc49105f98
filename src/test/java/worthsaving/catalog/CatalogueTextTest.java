package worthsaving.catalog;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import worthsaving.catalog.CatalogueText.Line;

class CatalogueTextTest {

    private static final CatalogueText SHIPPED = new CatalogueText(
            CatalogueReader.FILES.stream().collect(Collectors.toMap(f -> f, ShippedCatalogue::text)));

    static List<String> files() {
        return CatalogueReader.FILES;
    }

    @ParameterizedTest
    @MethodSource("files")
    void a_line_number_is_that_of_the_row_in_the_file(String file) {
        String[] text = SHIPPED.files().get(file).split("\n", -1);
        for (Line line : SHIPPED.lines(file)) {
            String first = line.cells().values().iterator().next();
            assertThat(text[(int) line.line() - 1].replace("\"", "")).startsWith(first);
        }
    }

    @ParameterizedTest
    @MethodSource("files")
    void writing_a_cell_as_it_is_changes_no_figure(String file) {
        CatalogueText text = SHIPPED;
        for (Line line : SHIPPED.lines(file)) {
            String column = line.cells().keySet().iterator().next();
            text = text.with(file, line.line(), column, line.cell(column));
        }
        assertThat(CatalogueDiff.between(SHIPPED.read().orElseThrow(), text.read().orElseThrow())).isEmpty();
        assertThat(text.lines(file)).isEqualTo(SHIPPED.lines(file));
    }

    @Test
    void one_cell_changes_and_every_other_line_keeps_its_bytes() {
        Line pump = line("OIL_PUMP");
        CatalogueText changed = SHIPPED.with("items.csv", pump.line(), "hours_mode", " 2.1 ");
        List<CatalogueDiff.Change> changes =
                CatalogueDiff.between(SHIPPED.read().orElseThrow(), changed.read().orElseThrow());
        assertThat(changes).singleElement().satisfies(change -> {
            assertThat(change.id()).isEqualTo("OIL_PUMP");
            assertThat(change.after()).isEqualTo("1.0 / 2.1 / 2.5 h");
        });
        String[] before = SHIPPED.files().get("items.csv").split("\n", -1);
        String[] after = changed.files().get("items.csv").split("\n", -1);
        assertThat(after).hasSameSizeAs(before);
        for (int k = 0; k < before.length; k++) {
            if (k != pump.line() - 1) {
                assertThat(after[k]).isEqualTo(before[k]);
            }
        }
    }

    @Test
    void a_wrong_figure_is_told_with_its_place() {
        Line pump = line("OIL_PUMP");
        CatalogueText changed = SHIPPED.with("items.csv", pump.line(), "hours_low", "lots, really");
        assertThat(changed.lines("items.csv")).hasSameSizeAs(SHIPPED.lines("items.csv"));
        assertThat(changed.read().faults()).first().satisfies(fault -> {
            assertThat(fault.line()).isEqualTo(pump.line());
            assertThat(fault.column()).isEqualTo("hours_low");
            assertThat(fault.message()).contains("lots, really");
        });
    }

    @Test
    void what_is_not_there_cannot_be_changed() {
        assertThatThrownBy(() -> SHIPPED.with("items.csv", 1, "hours_low", "1"))
                .hasMessageContaining("items.csv has no cell in line 1");
        assertThatThrownBy(() -> SHIPPED.with("items.csv", line("OIL_PUMP").line(), "colour", "red"))
                .hasMessageContaining("column colour");
        assertThatThrownBy(() -> SHIPPED.lines("cars.csv")).hasMessageContaining("cars.csv");
    }

    @Test
    void a_cell_with_a_line_break_is_left_to_an_editor() {
        String tools = SHIPPED.files().get("tools.csv");
        Map<String, String> files = new HashMap<>(SHIPPED.files());
        String row = SHIPPED.lines("tools.csv").get(0).cell("name");
        files.put("tools.csv", tools.replaceFirst(Pattern.quote(row), "\"" + row + "\nlong\""));
        CatalogueText broken = new CatalogueText(files);
        Line line = broken.lines("tools.csv").get(0);
        assertThatThrownBy(() -> broken.with("tools.csv", line.line(), "name", "short"))
                .hasMessageContaining("line break");
    }

    private static Line line(String id) {
        return SHIPPED.lines("items.csv").stream().filter(l -> l.cell("id").equals(id)).findFirst().orElseThrow();
    }
}
