package worthsaving.desktop;

import java.io.IOException;
import java.io.Reader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Set;
import worthsaving.catalog.ShippedCatalogue;
import worthsaving.intake.advert.AdvertReader;
import worthsaving.intake.advert.Vocabulary;
import worthsaving.quantity.Money;
import worthsaving.quantity.Range;
import worthsaving.quantity.Seed;
import worthsaving.ranking.JudgeSettings;
import worthsaving.ranking.ValueSource;
import worthsaving.valuation.ValueForecast;
import worthsaving.vehicle.Vehicle;

/** Test double for the price model: an invented value that falls with age. Never used by the program. */
public final class InventedValues implements ValueSource {

    public static final LocalDate TODAY = LocalDate.of(2025, 12, 1);

    @Override
    public ValueForecast forecast(Vehicle vehicle, LocalDate on) {
        double middle = 14_000 * Math.exp(-0.07 * vehicle.ageYears(on).orElse(10));
        return new ValueForecast(
                new Range(0.5 * middle, middle, 1.6 * middle).asPert(), Money.USD,
                List.of(new ValueForecast.Step("asking price by the test double", 1, "invented for tests")),
                List.of(new ValueForecast.Contribution("year", "invented", Money.usd(500))),
                List.of("This value is invented for tests."), "test double");
    }

    /** The shipped catalogue with these values. */
    public static Ground ground() {
        var catalogue = ShippedCatalogue.load();
        return new Ground(catalogue, new InventedValues(), JudgeSettings.usual(catalogue, Seed.DEFAULT), Set.of(),
                make -> Set.of(),
                new AdvertReader(Vocabulary.read(InventedValues::words)), TODAY);
    }

    private static Reader words(String file) {
        try {
            return Files.newBufferedReader(Path.of("shared", "vocabulary", file), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
