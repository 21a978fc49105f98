package worthsaving.intake;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Raw tables of open price data, where they are at hand: every row is a listing or a named fault. */
class OpenDataTest {

    /** Row counts of the files' own description; the least share of good rows is what was measured, rounded down. */
    @ParameterizedTest
    @CsvSource({
        "us_classifieds_2018_19.csv, 40665, 0.999",
        "us_classifieds_2020_21_title.csv, 1125, 0.99",
        "uk_listings_2020.csv, 78083, 0.97",
        "de_classifieds_2016_damage.csv, 13898, 0.98"
    })
    void reads_as_listings(String name, long rows, double leastGood) throws IOException {
        Path file = OutsideFiles.file("data/" + name);
        Map<String, Integer> reasons = new TreeMap<>();
        long[] known = new long[2];
        LotSink sink = new LotSink() {
            @Override
            public void good(LotEntry entry) {
                known[0] += entry.listing().ask().isKnown() ? 1 : 0;
                known[1] += entry.listing().vehicle().odometer().get().isPresent() ? 1 : 0;
            }

            @Override
            public void refused(RefusedRow row) {
                row.faults().forEach(this::warning);
            }

            @Override
            public void warning(IntakeFault fault) {
                reasons.merge(fault.column() + ": " + fault.what().replaceAll("'[^']*'|\\d+", "#"), 1, Integer::sum);
            }
        };
        LotSummary summary;
        try (InputStream in = Files.newInputStream(file)) {
            summary = new ListingReader(new Vocabulary(Set.of(), Set.of(), Map.of(), Set.of()), Tables.SETTINGS)
                    .read(in, name, sink);
        }

        assertThat(summary.good() + summary.refused()).isEqualTo(rows);
        assertThat(summary.good()).as("%s", reasons).isGreaterThanOrEqualTo((long) (leastGood * rows));
        // The US tables leave one odometer in seven blank.
        assertThat(known[0]).isGreaterThanOrEqualTo((long) (0.99 * summary.good()));
        assertThat(known[1]).isGreaterThanOrEqualTo((long) (0.8 * summary.good()));
    }
}
