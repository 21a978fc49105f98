package worthsaving.shell;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.Map;
import java.util.Properties;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class CasebookPathTest {

    @TempDir
    Path folder;

    private final Properties properties = new Properties();

    CasebookPathTest() {
        properties.setProperty("user.home", "home");
    }

    /** XDG Base Directory Specification 0.8: $HOME/.local/share unless XDG_DATA_HOME is set; relative paths are ignored. */
    @Test
    void follows_the_base_directory_specification() {
        Path usual = Path.of("home", ".local", "share", "worthsaving", "casebook.db");
        assertThat(CasebookPath.of(properties, Map.of())).isEqualTo(usual);
        assertThat(CasebookPath.of(properties, Map.of("XDG_DATA_HOME", "relative"))).isEqualTo(usual);
        assertThat(CasebookPath.of(properties, Map.of("XDG_DATA_HOME", folder.toAbsolutePath().toString())))
                .isEqualTo(folder.toAbsolutePath().resolve("worthsaving").resolve("casebook.db"));
    }

    @Test
    void a_property_names_another_file() {
        properties.setProperty(CasebookPath.PROPERTY, folder.resolve("other.db").toString());
        assertThat(CasebookPath.of(properties, Map.of("XDG_DATA_HOME", folder.toAbsolutePath().toString())))
                .isEqualTo(folder.resolve("other.db"));
    }
}
