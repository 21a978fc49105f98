package worthsaving.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.BufferedReader;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class ResourcesTest {

    @TempDir
    private Path folder;

    @AfterEach
    void forget() {
        System.clearProperty(Resources.PROPERTY);
    }

    @Test
    void finds_the_project_above_the_program() throws IOException {
        assertThat(Resources.find().path("shared/samples/lot.csv")).exists();
        try (BufferedReader lot = new BufferedReader(Resources.find().reader("shared/samples/lot.csv"))) {
            assertThat(lot.readLine()).startsWith("# Invented");
        }
    }

    @Test
    void the_property_comes_first() throws IOException {
        Files.createDirectories(folder.resolve("shared/catalogue"));
        System.setProperty(Resources.PROPERTY, folder.toString());

        assertThat(Resources.find().path("models")).isEqualTo(folder.resolve("models"));
    }

    @Test
    void says_where_it_looked() {
        System.setProperty(Resources.PROPERTY, folder.toString());

        assertThatThrownBy(Resources::find)
                .isInstanceOf(UserError.class)
                .hasMessageContaining(folder.toString())
                .hasMessageContaining("-Dworthsaving.home");
    }
}
