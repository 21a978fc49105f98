package worthsaving.trade;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Comparator;
import java.util.Currency;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import worthsaving.diagnosis.Belief;
import worthsaving.diagnosis.Diagnosis;
import worthsaving.diagnosis.FailureNetwork;
import worthsaving.diagnosis.SellerTrust;
import worthsaving.diagnosis.Witnesses;
import worthsaving.intake.IntakeSettings;
import worthsaving.intake.ListingReader;
import worthsaving.intake.Vocabulary;
import worthsaving.quantity.Distance;
import worthsaving.vehicle.Listing;

/**
 * The invented listings of the samples beside what a mechanic would say of them
 * (src/test/resources/trade/samples.csv; common practice, no source). Only what was seen and said counts
 * here, not what the seller left out.
 */
class SampleListingsTest {

    private static final Path LOT = Path.of("shared", "samples", "lot.csv");
    private static final Witnesses WITNESSES = new Witnesses(TradeCar.CATALOGUE, SellerTrust.USUAL);
    private static Map<String, Listing> listings;

    @BeforeAll
    static void read() throws IOException {
        IntakeSettings settings = new IntakeSettings(
                LocalDate.of(2025, 11, 22), Currency.getInstance("USD"), Distance.Unit.MILES);
        try (InputStream in = Files.newInputStream(LOT)) {
            listings = new ListingReader(Vocabulary.of(TradeCar.CATALOGUE, List.of()), settings)
                    .read(in, LOT.toString())
                    .listings()
                    .stream()
                    .collect(Collectors.toMap(Listing::id, Function.identity()));
        }
    }

    static Stream<CSVRecord> verdicts() throws IOException {
        return Resources.rows(Resources.TRADE.resolve("samples.csv")).stream();
    }

    @Test
    void every_sample_has_its_verdict() throws IOException {
        assertThat(verdicts().map(row -> row.get("id"))).containsExactlyInAnyOrderElementsOf(listings.keySet());
    }

    /** Wear that any old car has would fill a ranking by chance alone: what counts is what the evidence adds. */
    @ParameterizedTest(name = "{0}")
    @MethodSource("verdicts")
    void what_a_mechanic_names_first_is_among_the_three_that_rise_most(CSVRecord verdict) {
        Diagnosis diagnosis = diagnose(verdict.get("id"));

        assertThat(diagnosis.beliefs().stream()
                        .sorted(Comparator.comparingDouble(SampleListingsTest::gain).reversed())
                        .limit(3)
                        .map(Belief::item))
                .as(verdict.get("because"))
                .contains(verdict.get("item"));
        assertThat(diagnosis.belief(verdict.get("item")).posterior().value())
                .as(verdict.get("because"))
                .isGreaterThanOrEqualTo(Double.parseDouble(verdict.get("at_least")));
    }

    /** Findings of one listing may surprise, but none of these stories contradicts itself. */
    @ParameterizedTest(name = "{0}")
    @MethodSource("verdicts")
    void findings_of_a_sample_agree_with_each_other(CSVRecord verdict) {
        assertThat(diagnose(verdict.get("id")).conflict()).isLessThan(1);
    }

    private static Diagnosis diagnose(String id) {
        Listing listing = listings.get(id);
        return FailureNetwork.of(TradeCar.CATALOGUE, listing.vehicle(), listing.exposure(), listing.seen(),
                        WITNESSES.unmentioned(listing))
                .diagnose(WITNESSES.evidence(listing.observations()));
    }

    private static double gain(Belief belief) {
        return belief.posterior().value() - belief.prior().value();
    }
}
