package worthsaving.catalog;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.Test;
import worthsaving.quantity.Distance;

/**
 * The onsets in items.csv beside the answers they were fitted to, src/bench/onset/points.csv. The whole
 * chance, secondary damage included, is tried in worthsaving.trade.MarginalsTest.
 */
class OnsetPointsTest {

    private static final Catalogue CATALOGUE = ShippedCatalogue.load();

    /** An item's own chance is what its causes leave of the answer: never more than a rounding above it. */
    @Test
    void own_onsets_stay_within_the_answers_they_come_from() throws IOException {
        Set<String> fitted = new HashSet<>();
        for (CSVRecord row : points()) {
            Onset onset = CATALOGUE.itemsById().get(row.get("item")).onset();
            assertThat(onset.mileageShare()).isEqualTo(Double.parseDouble(row.get("mileage_share")));
            stayWithin(row, "p6", onset, 6, 60_000, 1.3);
            stayWithin(row, "p10", onset, 10, 120_000, 1.2);
            stayWithin(row, "p15", onset, 15, 180_000, 1.3);
            fitted.add(row.get("item"));
        }
        assertThat(CATALOGUE.itemsById().keySet()).isEqualTo(fitted);
    }

    @Test
    void older_cars_of_more_miles_are_never_sounder() {
        for (FailureItem item : CATALOGUE.items()) {
            double last = 0;
            for (int years = 0; years <= 25; years++) {
                double now = item.onset().prior(years, Distance.ofMiles(12_000.0 * years)).value();
                assertThat(now).as(item.id()).isGreaterThanOrEqualTo(last);
                last = now;
            }
        }
    }

    private static void stayWithin(
            CSVRecord row, String column, Onset onset, double age, double miles, double share) {
        double asked = Double.parseDouble(row.get(column));
        assertThat(onset.prior(age, Distance.ofMiles(miles)).value())
                .as(row.get("item") + " " + column)
                .isBetween(Math.min(0.0001, asked / 20), Math.max(asked + 0.01, share * asked));
    }

    static List<CSVRecord> points() throws IOException {
        try (CSVParser parser = CSVParser.parse(
                Path.of("src", "bench", "onset", "points.csv"),
                StandardCharsets.UTF_8,
                CSVFormat.DEFAULT
                        .builder()
                        .setCommentMarker('#')
                        .setHeader()
                        .setSkipHeaderRecord(true)
                        .get())) {
            return parser.getRecords();
        }
    }
}
