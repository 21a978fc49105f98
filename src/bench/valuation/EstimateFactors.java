import java.io.IOException;
import java.io.Reader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.function.Predicate;
import worthsaving.market.Cleaning;
import worthsaving.market.CleaningRule;
import worthsaving.market.DatasetShape;
import worthsaving.market.MarketFactor;
import worthsaving.market.PriceRow;
import worthsaving.market.PriceTableReader;
import worthsaving.valuation.FactorEstimate;
import worthsaving.valuation.PriceModel;

/** Prints lines for shared/market/market_settings.csv: EstimateFactors DATA_FOLDER. */
public final class EstimateFactors {

    private EstimateFactors() {}

    public static void main(String[] args) throws IOException {
        PriceModel us = model("models/us.json");
        List<PriceRow> titles = rows(args[0], "us_classifieds_2020_21_title");
        for (String brand : List.of("rebuilt", "salvage", "lien")) {
            print("US", us, titles, "title." + brand, r -> r.title().equals(brand), r -> r.title().equals("clean"),
                    "US classifieds 2020-21");
        }
        List<PriceRow> bids = rows(args[0], "us_auction_2020_title");
        print("US", us, bids, "title.salvage (running bids: a lower bound)", r -> r.title().equals("salvage"),
                r -> r.title().equals("clean"), "US auction 2020");
        List<PriceRow> adverts = rows(args[0], "us_classifieds_2018_19");
        for (String condition : List.of("fair", "salvage", "excellent", "like new")) {
            print("US", us, adverts, "condition." + condition.replace(' ', '-'), r -> r.condition().equals(condition),
                    r -> r.condition().equals("good"), "US classifieds 2018-19");
        }
        if (Files.exists(Path.of("models/de.json"))) {
            print("DE", model("models/de.json"), rows(args[0], "de_classifieds_2016_damage"), "damage.unrepaired",
                    r -> r.unrepairedDamage() == 1, r -> r.unrepairedDamage() == 0, "Germany classifieds 2016");
        }
    }

    private static void print(String market, PriceModel model, List<PriceRow> rows, String key,
            Predicate<PriceRow> marked, Predicate<PriceRow> reference, String source) {
        try {
            MarketFactor f = FactorEstimate.measure(model, rows, key, marked, reference, source);
            System.out.printf(Locale.ROOT, "%s,%s,%.3f,%.3f,%.3f,%d,measured,\"%s\"%n", market, key, f.range().low(),
                    f.value(), f.range().high(), f.cars(), f.source().text());
        } catch (IllegalArgumentException e) {
            System.out.println("# " + e.getMessage());
        }
    }

    private static PriceModel model(String file) throws IOException {
        try (Reader reader = Files.newBufferedReader(Path.of(file))) {
            return PriceModel.read(reader, file);
        }
    }

    private static List<PriceRow> rows(String folder, String name) throws IOException {
        try (Reader shape = Files.newBufferedReader(Path.of("shared/market", name + ".properties"));
                Reader rules = Files.newBufferedReader(Path.of("shared/market/cleaning.csv"));
                Reader data = Files.newBufferedReader(Path.of(folder, name + ".csv"))) {
            return Cleaning.clean(
                            PriceTableReader.read(data, DatasetShape.read(shape, name)),
                            CleaningRule.read(rules, "cleaning.csv"))
                    .table()
                    .rows();
        }
    }
}
