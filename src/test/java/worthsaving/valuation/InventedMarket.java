package worthsaving.valuation;

import java.io.IOException;
import java.io.Reader;
import java.io.StringReader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import worthsaving.market.Cleaning;
import worthsaving.market.DatasetShape;
import worthsaving.market.MarketSettings;
import worthsaving.market.PriceRow;
import worthsaving.market.PriceTable;
import worthsaving.quantity.Distance;
import worthsaving.quantity.Seed;
import worthsaving.vehicle.Fact;
import worthsaving.vehicle.TitleBrand;
import worthsaving.vehicle.Vehicle;

/** A market made up by a known formula, so that what a model should find is known. */
final class InventedMarket {

    static final String[] MAKES = {"alpha", "beta", "gamma"};
    static final double NOISE = 0.2;
    static final FitSettings SMALL = new FitSettings(
            3, 3000, 2, 2, 80, 16, 0.1, 5, 1, FitSettings.defaults().ensembles(), 0, FitSettings.Apart.CARS);

    private InventedMarket() {}

    /** ln price without noise: make, model, age, miles, condition. */
    static double logPrice(int make, int model, double age, double miles, boolean good) {
        return 10 + 0.2 * make + 0.1 * model - 0.1 * age - 0.3 * miles / 1e5 + (good ? 0 : -0.3);
    }

    static List<PriceRow> rows(int n, String seed) {
        SplittableRandom random = Seed.DEFAULT.derive(seed).generator();
        List<PriceRow> rows = new ArrayList<>();
        for (int i = 0; i < n; i++) {
            int make = random.nextInt(3);
            int model = random.nextInt(4);
            int year = 2000 + random.nextInt(19);
            double age = 2019.0 - year - 0.5;
            double miles = Math.rint(Math.max(500, age * 10_000 * (0.5 + random.nextDouble())));
            boolean good = random.nextInt(4) > 0;
            double y = logPrice(make, model, age, miles, good) + NOISE * random.nextGaussian();
            rows.add(new PriceRow(i + 2, Math.rint(Math.exp(y)), MAKES[make], "m" + model, year, miles,
                    good ? "good" : "fair", 4, Double.NaN, Double.NaN, "gas", "automatic", model < 2 ? "sedan" : "suv",
                    "", "", Double.NaN, LocalDate.of(2019, 1, 1)));
        }
        return rows;
    }

    static Cleaning data(int n) throws IOException {
        return data(rows(n, "invented market"));
    }

    private static Cleaning data(List<PriceRow> rows) throws IOException {
        DatasetShape shape = DatasetShape.read(new StringReader("""
                name = Invented market
                market = US
                currency = USD
                odometer-unit = miles
                price-kind = asking
                source = a formula
                licence = none needed
                date = 2019-01-01
                column.price = price
                """), "invented");
        return Cleaning.clean(new PriceTable(shape, rows, List.of(), 0), List.of());
    }

    private static PriceModel fitted;

    /** One small model for all tests that only read it. */
    static synchronized PriceModel model() throws IOException {
        if (fitted == null) {
            fitted = fit(SMALL);
        }
        return fitted;
    }

    static PriceModel fit(FitSettings settings) throws IOException {
        return fit(rows(3000, "invented market"), settings);
    }

    static PriceModel fit(List<PriceRow> rows, FitSettings settings) throws IOException {
        return PriceModelFitter.fit(data(rows), settings, Seed.DEFAULT, (step, share) -> {}, () -> false);
    }

    static MarketSettings settings() throws IOException {
        try (Reader factors = Files.newBufferedReader(Path.of("shared/market/market_settings.csv"));
                Reader index = Files.newBufferedReader(Path.of("shared/market/price_index.csv"))) {
            return MarketSettings.read(factors, index, "US");
        }
    }

    static Vehicle.Builder car(String make, String model, int year, double miles) {
        return Vehicle.builder()
                .make(Fact.known(make))
                .model(Fact.known(model))
                .year(Fact.known(year))
                .odometer(Fact.known(Distance.ofMiles(miles)))
                .title(TitleBrand.CLEAN);
    }
}
