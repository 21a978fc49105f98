package worthsaving.desktop.catalogue;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import worthsaving.desktop.MemoryShelf;

class IdNamesTest {

    private static final IdNames NAMES = new IdNames(Map.of("RAG", "Rag", "PULLER", "Bearing puller, three arms"));

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {
        "Rag; Bearing puller, three arms | RAG PULLER",
        "rag ;bearing puller, Three arms; | RAG PULLER",
        "RAG PULLER | RAG PULLER",
        "RAG; Rag | RAG RAG",
        "Spanner; RAG | Spanner RAG",
    })
    void names_and_ids_are_taken_alike(String typed, String cell) {
        assertThat(NAMES.cell("tools", typed)).isEqualTo(cell);
    }

    @Test
    void other_columns_stay_as_they_are() {
        assertThat(NAMES.shown("caution", "RAG")).isEqualTo("RAG");
        assertThat(NAMES.cell("caution", "Rag; hot")).isEqualTo("Rag; hot");
    }

    @Test
    void every_list_of_the_shipped_catalogue_comes_back_from_its_names() {
        var text = new MemoryShelf().read();
        IdNames names = new IdNames(Entry.names(text));
        for (Shown shown : Shown.values()) {
            text.lines(shown.file()).forEach(line -> line.cells().forEach((column, cell) -> {
                if (IdNames.isList(column)) {
                    assertThat(names.cell(column, names.shown(column, cell))).isEqualTo(cell.strip());
                }
            }));
        }
    }
}
