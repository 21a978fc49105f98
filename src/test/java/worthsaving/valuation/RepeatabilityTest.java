package worthsaving.valuation;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.Reader;
import java.io.StringReader;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import worthsaving.market.Cleaning;
import worthsaving.market.CleaningRule;
import worthsaving.market.DatasetShape;
import worthsaving.market.PriceTableReader;
import worthsaving.quantity.Seed;

/** One seed gives one file, byte for byte, whatever the threads: on the 804 shipped cars. */
class RepeatabilityTest {

    private static final FitSettings SETTINGS = new FitSettings(
            3, 400, 1, 2, 40, 16, 0.1, 5, 2, FitSettings.defaults().ensembles(), 1_000, FitSettings.Apart.CARS);

    private static Cleaning data;
    private static String onOneThread;

    @BeforeAll
    static void fitOnOneThread() throws IOException {
        try (Reader shape = Files.newBufferedReader(Path.of("shared/market/us_cars_2005.properties"));
                Reader rules = Files.newBufferedReader(Path.of("shared/market/cleaning.csv"));
                Reader rows = Files.newBufferedReader(Path.of("datasets/us_cars_2005.csv"))) {
            data = Cleaning.clean(
                    PriceTableReader.read(rows, DatasetShape.read(shape, "us_cars_2005.properties")),
                    CleaningRule.read(rules, "cleaning.csv"));
        }
        onOneThread = fit(1, Seed.DEFAULT);
    }

    private static String fit(int threads, Seed seed) throws IOException {
        PriceModel model = PriceModelFitter.fit(
                data, SETTINGS.withThreads(threads), seed, (step, share) -> {}, () -> false);
        StringWriter text = new StringWriter();
        model.write(text);
        return text.toString();
    }

    @ParameterizedTest
    @ValueSource(ints = {1, 2, 8})
    void the_same_seed_gives_the_same_bytes(int threads) throws IOException {
        assertThat(fit(threads, Seed.DEFAULT)).isEqualTo(onOneThread);
    }

    @Test
    void another_seed_gives_another_model() throws IOException {
        assertThat(fit(2, new Seed(7))).isNotEqualTo(onOneThread);
    }

    /** With few rows a Gaussian process is fitted too; it comes back from the file as it was. */
    @Test
    void the_file_brings_the_whole_model_back() throws IOException {
        PriceModel back = PriceModel.read(new StringReader(onOneThread), "cars.json");
        StringWriter text = new StringWriter();
        back.write(text);

        assertThat(back.point.process().fitted()).isTrue();
        assertThat(text.toString()).isEqualTo(onOneThread);
    }
}
