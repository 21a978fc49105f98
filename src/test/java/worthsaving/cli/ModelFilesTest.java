package worthsaving.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Price model files that cannot be trusted are refused before anything is judged. */
class ModelFilesTest {

    private static final String LOT = "shared/samples/lot.csv";

    @TempDir
    private Path folder;

    private Run with(byte[] model) throws IOException {
        return Run.of("judge", LOT, "--model", Files.write(folder.resolve("mine.json"), model).toString());
    }

    private static void refused(Run run, String reason) {
        assertThat(run.code()).isEqualTo(ExitCode.INSTALLATION_FAULTY);
        assertThat(run.out()).isEmpty();
        assertThat(run.err()).contains("mine.json", reason, "take a good copy").doesNotContain("Exception");
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {
        "id,make,model|not JSON at line 1",
        "{}|is no price model",
        "[]|is no price model",
        "''|is no price model",
        "{`format`:`another format`,`version`:1}|is no price model",
        "{`format`:`worthsaving price model`,`version`:99}|newer version (format 99",
        "{`format`:`worthsaving price model`,`version`:1}|older version (format 1",
        "{`format`:`worthsaving price model`,`version`:2}|checksum",
    })
    void other_files_and_newer_ones(String text, String reason) throws IOException {
        refused(with(text.replace('`', '"').getBytes()), reason);
    }

    @Test
    void a_file_that_is_not_text() throws IOException {
        refused(with(new byte[] {(byte) 0xff, (byte) 0xd8, (byte) 0xfe, 0, 1, 2}), "not UTF-8 text");
    }

    @Test
    void a_truncated_one() throws IOException {
        byte[] whole = Files.readAllBytes(Path.of("models", "de.json"));
        refused(with(java.util.Arrays.copyOf(whole, whole.length / 2)), "is damaged");
    }

    @Test
    void one_with_a_changed_figure() throws IOException {
        String whole = Files.readString(Path.of("models", "de.json"));
        refused(with(whole.replaceFirst("\"center\":\\[9", "\"center\":[8").replaceFirst("\"guard\":\\[", "\"guard\":[1")
                .getBytes()), "checksum does not match");
    }

    @Test
    void one_that_is_not_there_and_a_folder() {
        for (String model : new String[] {"no/such.json", folder.toString(), "zz"}) {
            Run run = Run.of("judge", LOT, "--model", model);

            assertThat(run.code()).isEqualTo(ExitCode.INSTALLATION_FAULTY);
            assertThat(run.err()).contains("There is no price model " + model, "worthsaving fit");
        }
    }
}
