package worthsaving.ranking;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Set;
import worthsaving.catalog.Catalogue;
import worthsaving.intake.IntakeSettings;
import worthsaving.intake.ListingReader;
import worthsaving.intake.Vocabulary;
import worthsaving.quantity.Money;
import worthsaving.quantity.Range;
import worthsaving.valuation.ValueForecast;
import worthsaving.vehicle.Listing;

/** The invented lot of the project folder, worth what a made-up curve by age says. */
public final class SampleLot {

    private static final Path FILE = Path.of("shared", "samples", "lot.csv");

    private SampleLot() {}

    public static List<Listing> read(Catalogue catalogue) {
        try (InputStream in = Files.newInputStream(FILE)) {
            return new ListingReader(
                    Vocabulary.of(catalogue, Set.of()), IntakeSettings.american(LocalDate.of(2025, 11, 25)))
                    .read(in, "lot.csv")
                    .listings();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** Not the shipped price model, so that a new fit of it moves nothing here. */
    public static ValueSource byAge() {
        return (car, on) -> {
            double mode = 26_000 * Math.pow(0.88, car.ageYears(on).orElse(10));
            return new ValueForecast(new Range(0.7 * mode, mode, 1.4 * mode).asPert(), Money.USD, List.of(),
                    List.of(), List.of(), "made up");
        };
    }
}
