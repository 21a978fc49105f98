package worthsaving.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** A file of the installation that is gone, foreign or cut short: said by name, with exit code 4, not 70. */
class DamagedInstallationTest {

    @TempDir
    Path home;

    private Path car;

    @BeforeEach
    void an_installation_of_our_own() throws IOException {
        copy(home);
        car = Files.writeString(home.resolve("car.csv"), """
                id,year,make,model,odometer,price,currency,title,present
                A1,2014,honda,civic,98000,900,USD,clean,NO_CRANK
                """);
        System.setProperty(Resources.PROPERTY, home.toString());
    }

    @AfterEach
    void forget() {
        System.clearProperty(Resources.PROPERTY);
    }

    static void copy(Path home) throws IOException {
        for (String folder : List.of("shared/catalogue", "shared/market", "shared/vocabulary")) {
            try (Stream<Path> files = Files.list(Path.of(folder))) {
                for (Path file : files.toList()) {
                    Files.createDirectories(home.resolve(folder));
                    Files.copy(file, home.resolve(file));
                }
            }
        }
        Files.createDirectories(home.resolve("models"));
        Files.copy(Path.of("shared/places.csv"), home.resolve("shared/places.csv"));
        Files.copy(Path.of("models/us.json"), home.resolve("models/us.json"));
    }

    static List<String> files() {
        return List.of("shared/catalogue/items.csv", "shared/catalogue/money.csv", "shared/market/market_settings.csv",
                "shared/market/price_index.csv");
    }

    private void refused(String file) {
        Run run = Run.of("judge", car.toString(), "--today", "2026-01-15");

        assertThat(run.code()).as(file + ": " + run.err()).isEqualTo(ExitCode.INSTALLATION_FAULTY);
        assertThat(run.err()).contains(Path.of(file).getFileName().toString()).doesNotContain("Exception");
        assertThat(run.out()).isEmpty();
    }

    @ParameterizedTest
    @MethodSource("files")
    void a_file_that_is_gone(String file) throws IOException {
        Files.delete(home.resolve(file));
        refused(file);
    }

    @ParameterizedTest
    @MethodSource("files")
    void a_file_of_something_else(String file) throws IOException {
        Files.write(home.resolve(file), new byte[] {(byte) 0x89, 'P', 'N', 'G', '\r', '\n', (byte) 0x1a, '\n', (byte) 0xff});
        refused(file);
    }

    @Test
    void a_model_that_is_gone_is_named() throws IOException {
        Files.delete(home.resolve("models/us.json"));

        Run run = Run.of("judge", car.toString());

        assertThat(run.code()).isEqualTo(ExitCode.INSTALLATION_FAULTY);
        assertThat(run.err()).contains("There is no price model us", "models/us.json");
    }

    @ParameterizedTest
    @MethodSource("files")
    void an_emptied_file(String file) throws IOException {
        Files.write(home.resolve(file), new byte[0]);
        refused(file);
    }
}
