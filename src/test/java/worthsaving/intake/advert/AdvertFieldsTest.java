package worthsaving.intake.advert;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assumptions.assumeThat;

import java.io.BufferedReader;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Whole adverts against the fields a person reads out of them. All adverts are invented; the expectations were written
 * before the first run. Share of fields exact on that first run:
 *
 * <ul>
 *   <li>invented.jsonl, 72 adverts: 98.9 % (997 of 1,008), but the phrases were written with these adverts in view, so
 *       this says nothing about adverts not seen;
 * <li>invented_blind.jsonl, 40 adverts, vocabulary frozen: 88.2 %, or 90.9 % (509 of 560) once running states left
 * out
 *       of the expectations counted as "unknown";
 *   <li>invented_blind2.jsonl, 40 adverts, vocabulary frozen after widening: 93.2 %;
 *   <li>invented_blind3.jsonl, 20 adverts, vocabulary frozen after widening again: 95.7 %;
 *   <li>invented_blind4.jsonl and invented_blind5.jsonl, 40 adverts each in styles not met before (British, German,
 *       auction lists, forum posts, capitals, emoji, phone notes): 88.8 and 89.1 %, or 91.8 and 92.3 % once labels
 *       follow the conventions of the trade notes (names as price data hold them, what follows from a symptom);
 *   <li>invented_blind6.jsonl, 40 adverts in the same styles, vocabulary frozen after widening: 92.0 %, symptoms
 *       60 %. The rates after that are rates on adverts learnt from;
 *   <li>invented_blind7.jsonl, 60 adverts, vocabulary frozen: 91.4 %. The vocabulary was widened after it, part by part
 *       and symptom by symptom, so its rate now is a rate on adverts learnt from too;
 *   <li>invented_blind8.jsonl, 60 adverts, vocabulary frozen: 94.2 %; only places and dollars were added since;
 *   <li>invented_blind9.jsonl, 60 denser adverts, vocabulary frozen: 82.4 %; the rules were widened after it;
 *   <li>invented_blind10.jsonl, 60 adverts, half of them dense, vocabulary frozen: 92.7 %; widened after it too;
 *   <li>invented_blind11.jsonl, 60 adverts, mostly American, vocabulary frozen: 93.2 %;
 *   <li>invented_blind12.jsonl, 60 adverts in many styles, vocabulary frozen: 87.5 %, or 91.0 % once 40
 *       labels were mended (their writer knew only some of the ids); both were learnt from afterwards.
 *   <li>invented_blind13.jsonl, 60 adverts, mostly American, vocabulary frozen: 91.3 %, or 93.2 % once 17 labels
 *       follow the conventions of the others (full names of states, "HPI clear", badges before a trim); learnt from.
 *   <li>invented_blind14.jsonl, 60 adverts, mostly American, vocabulary frozen: 93.6 %; nothing was added since.
 * </ul>
 */
class AdvertFieldsTest {

    @Test
    void trade_notes_adverts_are_read_to_95_percent() throws IOException {
        Path shared = Path.of(System.getProperty("worthsaving.shared", "../shared"));
        Path file = shared.resolve("trade/ads.jsonl");
        assumeThat(file).withFailMessage("skipped: no trade notes at " + file + "; set -Dworthsaving.shared").exists();
        isRead(file, 15, 0.95);
    }

    /** All but 14 have been learnt from by now: only the first run of a set tells what a new advert may expect. */
    @ParameterizedTest
    @CsvSource({"invented.jsonl, 72, 0.95", "invented_blind.jsonl, 40, 0.95", "invented_blind2.jsonl, 40, 0.95",
            "invented_blind3.jsonl, 20, 0.95", "invented_blind4.jsonl, 40, 0.95", "invented_blind5.jsonl, 40, 0.95",
            "invented_blind6.jsonl, 40, 0.95", "invented_blind7.jsonl, 60, 0.968", "invented_blind8.jsonl, 60, 0.966",
            "invented_blind9.jsonl, 60, 0.915", "invented_blind10.jsonl, 60, 0.968",
            "invented_blind11.jsonl, 60, 0.957", "invented_blind12.jsonl, 60, 0.967",
            "invented_blind13.jsonl, 60, 0.979", "invented_blind14.jsonl, 60, 0.935"})
    void invented_adverts_are_read_at_least_so_well(String file, int adverts, double least) throws IOException {
        isRead(Path.of("src/test/resources/adverts", file), adverts, least);
    }

    private static void isRead(Path file, int adverts, double least) throws IOException {
        try (BufferedReader lines = Files.newBufferedReader(file)) {
            FieldScore score = FieldScore.of(lines);
            assertThat(score.adverts()).isEqualTo(adverts);
            assertThat(score.rate()).as(score.report()).isGreaterThanOrEqualTo(least);
        }
    }
}
