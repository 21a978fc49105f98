package worthsaving.desktop;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** What the window says in place of the lot when a file of the installation cannot be used. */
class DamagedFolderTest {

    private static final LocalDate TODAY = LocalDate.of(2026, 1, 15);

    @TempDir
    Path home;

    @BeforeEach
    void an_installation_of_our_own() throws IOException {
        for (String folder : List.of("shared/catalogue", "shared/market", "shared/vocabulary", "models")) {
            try (Stream<Path> files = Files.list(Path.of(folder))) {
                for (Path file : files.toList()) {
                    Files.createDirectories(home.resolve(folder));
                    Files.copy(file, home.resolve(file));
                }
            }
        }
        System.setProperty("worthsaving.home", home.toString());
    }

    @AfterEach
    void forget() {
        System.clearProperty("worthsaving.home");
    }

    static List<String> files() {
        return List.of("shared/catalogue/items.csv", "models/us.json", "shared/market/market_settings.csv",
                "shared/vocabulary/makes.csv");
    }

    @Test
    void a_whole_one_is_read() {
        assertThat(ProjectFolder.find().read(TODAY).makes()).contains("honda");
    }

    @ParameterizedTest
    @MethodSource("files")
    void one_without_a_file_is_told(String file) throws IOException {
        Files.delete(home.resolve(file));
        told();
    }

    @ParameterizedTest
    @MethodSource("files")
    void one_with_a_foreign_file_is_told(String file) throws IOException {
        Files.write(home.resolve(file), new byte[] {(byte) 0x89, 'P', 'N', 'G', '\r', '\n', (byte) 0x1a, '\n', (byte) 0xff});
        told();
    }

    private static void told() {
        assertThatThrownBy(() -> ProjectFolder.find().read(TODAY)).isInstanceOfSatisfying(ProjectFolder.CannotStart.class,
                e -> assertThat(e.getMessage()).containsAnyOf("there is no file", "not UTF-8", "items.csv", "makes.csv")
                        .matches(m -> m.lines().count() <= 4, "no more than a few lines")
                        .doesNotContain("Exception"));
    }
}
