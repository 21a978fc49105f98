package worthsaving.intake.advert;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assumptions.assumeThat;

import java.io.BufferedReader;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;

/** Whole adverts against the fields a person reads out of them. All adverts are invented. */
class AdvertFieldsTest {

    @Test
    void trade_notes_adverts_are_read_to_95_percent() throws IOException {
        Path shared = Path.of(System.getProperty("worthsaving.shared", "../shared"));
        Path file = shared.resolve("trade/ads.jsonl");
        assumeThat(file).withFailMessage("skipped: no trade notes at " + file + "; set -Dworthsaving.shared").exists();
        try (BufferedReader lines = Files.newBufferedReader(file)) {
            FieldScore score = FieldScore.of(lines);
            assertThat(score.adverts()).isEqualTo(15);
            assertThat(score.rate()).as(score.report()).isGreaterThanOrEqualTo(0.95);
        }
    }

    @Test
    void invented_adverts_in_other_styles_are_read_to_95_percent() throws IOException {
        try (BufferedReader lines = Files.newBufferedReader(Path.of("src/test/resources/adverts/invented.jsonl"))) {
            FieldScore score = FieldScore.of(lines);
            assertThat(score.adverts()).isGreaterThanOrEqualTo(60);
            assertThat(score.rate()).as(score.report()).isGreaterThanOrEqualTo(0.95);
        }
    }
}
