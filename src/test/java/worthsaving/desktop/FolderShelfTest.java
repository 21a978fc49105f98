package worthsaving.desktop;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import worthsaving.catalog.CatalogueReader;
import worthsaving.catalog.CatalogueText;
import worthsaving.catalog.ShippedCatalogue;

class FolderShelfTest {

    @TempDir
    private Path folder;

    @BeforeEach
    void copy() throws IOException {
        for (String file : CatalogueReader.FILES) {
            Files.writeString(folder.resolve(file), ShippedCatalogue.text(file));
        }
    }

    @Test
    void what_differs_is_replaced_and_the_version_before_stays_beside_it() throws IOException {
        FolderShelf shelf = new FolderShelf(folder);
        CatalogueText before = shelf.read();
        long line = before.lines("tools.csv").get(0).line();

        CatalogueText after = before.with("tools.csv", line, "at_hand", "no");
        shelf.keep(after);

        assertThat(shelf.read().equals(after)).isTrue();
        assertThat(Files.readString(folder.resolve("tools.csv.before"))).isEqualTo(before.files().get("tools.csv"));
        assertThat(names()).hasSize(CatalogueReader.FILES.size() + 1);
    }

    @Test
    void what_is_the_same_is_left_alone() throws IOException {
        FolderShelf shelf = new FolderShelf(folder);
        shelf.keep(shelf.read());
        assertThat(names()).containsExactlyInAnyOrderElementsOf(CatalogueReader.FILES);
    }

    @Test
    void a_file_that_is_gone_is_named() throws IOException {
        Files.delete(folder.resolve("money.csv"));
        assertThatThrownBy(() -> new FolderShelf(folder).read()).hasMessageContaining("money.csv");
    }

    private List<String> names() throws IOException {
        try (Stream<Path> files = Files.list(folder)) {
            return files.map(f -> f.getFileName().toString()).toList();
        }
    }
}
