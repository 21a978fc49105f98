package worthsaving.valuation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.io.Reader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import worthsaving.market.MarketSettings;
import worthsaving.vehicle.Vehicle;

/** The models that are shipped load, are small enough, and value ordinary cars believably. */
class ShippedModelTest {

    /** Three seeds of 600 trees each take some ten million; one more ensemble should be a decision. */
    private static final long MOST_BYTES = 12_000_000;
    private static final LocalDate THEN = LocalDate.of(2019, 4, 1);

    static List<Path> models() throws IOException {
        try (Stream<Path> files = Files.list(Path.of("models"))) {
            return files.filter(f -> f.toString().endsWith(".json")).sorted().toList();
        }
    }

    private static PriceModel read(Path file) throws IOException {
        try (Reader reader = Files.newBufferedReader(file)) {
            return PriceModel.read(reader, file.toString());
        }
    }

    private static Valuer valuer(PriceModel model) throws IOException {
        try (Reader factors = Files.newBufferedReader(Path.of("shared/market/market_settings.csv"));
                Reader index = Files.newBufferedReader(Path.of("shared/market/price_index.csv"))) {
            return new Valuer(model, MarketSettings.read(factors, index, model.market()));
        }
    }

    @ParameterizedTest
    @MethodSource("models")
    void loads_with_a_card_that_says_where_it_comes_from(Path file) throws IOException {
        PriceModel model = read(file);
        String card = Files.readString(Path.of(file.toString().replace(".json", ".md")));

        assertThat(Files.size(file)).isLessThan(MOST_BYTES);
        assertThat(card).startsWith(model.card().toMarkdown());
        assertThat(card).contains(model.card().source()).contains(model.card().licence()).contains("No row of the data");
        assertThat(model.card().bands()).allSatisfy(b -> assertThat(b.coverage()).isBetween(0.75, 0.85));
        assertThat(valuer(model).model().makes()).isNotEmpty();
    }

    @ParameterizedTest
    @CsvSource({
        "2014, nissan, rogue, 80000, 7000, 14000",
        "2012, honda, civic, 100000, 5000, 10500",
        "2010, ford, f-150, 120000, 7000, 17000",
        "2005, toyota, camry, 160000, 2500, 5500"
    })
    void an_ordinary_car_of_2019_is_worth_what_adverts_asked(
            int year, String make, String model, double miles, double least, double most) throws IOException {
        Vehicle car = InventedMarket.car(make, model, year, miles).build();

        assertThat(valuer(read(Path.of("models/us.json"))).forecast(car, THEN).quantile(0.5).amount())
                .isBetween(least, most);
    }

    /** Bounds: the middle 80 % of the asking prices of such cars in the data, a fifth wider. */
    @ParameterizedTest
    @CsvSource({
        "2016, ford, fiesta, 30000, 6100, 11900",
        "2014, vauxhall, corsa, 52000, 3500, 7000",
        "2013, bmw, 3 series, 85000, 6700, 13500",
        "2016, toyota, yaris, 30000, 6500, 14400"
    })
    void an_ordinary_car_of_2020_is_worth_in_pounds_what_british_adverts_asked(
            int year, String make, String model, double miles, double least, double most) throws IOException {
        Vehicle car = InventedMarket.car(make, model, year, miles).build();
        ValueForecast forecast = valuer(read(Path.of("models/uk.json"))).forecast(car, LocalDate.of(2020, 7, 1));

        assertThat(forecast.quantile(0.5).amount()).isBetween(least, most);
        assertThat(forecast.quantile(0.5).currency().getCurrencyCode()).isEqualTo("GBP");
    }

    @Test
    void more_miles_and_more_years_are_worth_less() throws IOException {
        Valuer valuer = valuer(read(Path.of("models/us.json")));
        double last = Double.POSITIVE_INFINITY;
        for (double miles = 40_000; miles <= 240_000; miles += 50_000) {
            double value = valuer.forecastWithoutReasons(InventedMarket.car("honda", "accord", 2010, miles).build(), THEN)
                    .mean().amount();
            assertThat(value).isLessThan(last);
            last = value;
        }
        double newer = valuer.forecast(InventedMarket.car("honda", "accord", 2014, 90_000).build(), THEN).mean().amount();
        double older = valuer.forecast(InventedMarket.car("honda", "accord", 2007, 90_000).build(), THEN).mean().amount();
        assertThat(newer).isGreaterThan(1.3 * older);
    }

    @Test
    void reasons_add_up_on_the_shipped_model_too() throws IOException {
        Valuer valuer = valuer(read(Path.of("models/us.json")));
        ValueForecast forecast = valuer.forecast(InventedMarket.car("jeep", "wrangler", 2008, 140_000).build(), THEN);
        double sum = forecast.contributions().stream().mapToDouble(c -> c.money().amount()).sum();
        double typical = forecast.quantile(0.5).amount() - sum;

        ValueForecast other = valuer.forecast(InventedMarket.car("subaru", "outback", 2013, 90_000).build(), THEN);
        double otherSum = other.contributions().stream().mapToDouble(c -> c.money().amount()).sum();
        assertThat(typical).isPositive();
        assertThat(other.quantile(0.5).amount() - otherSum).isCloseTo(typical, within(0.1 * typical));
    }

    /** Rows read less rows dropped are the rows used: so the lines taken apart say all that cleaning did. */
    @ParameterizedTest
    @MethodSource("models")
    void the_card_says_of_each_cleaning_rule_what_it_cost(Path file) throws IOException {
        ModelCard card = read(file).card();
        List<ModelCard.Cleaned> rules = card.cleaned();
        long read = Long.parseLong(rules.get(0).rule().replaceAll(" rows read.*", "").replace(",", ""));
        long dropped = rules.stream().filter(ModelCard.Cleaned::dropped).mapToLong(r -> r.count().orElseThrow()).sum();
        assertThat(rules.subList(1, rules.size())).allSatisfy(r -> {
            assertThat(r.count()).isPresent();
            assertThat(r.why()).isNotBlank();
        });
        assertThat(read - dropped).isGreaterThanOrEqualTo(card.rows());
        assertThat(card.coverage()).isBetween(0.78, 0.82);
        assertThat(card.chosen().name()).isEqualTo("blend");
    }
}
