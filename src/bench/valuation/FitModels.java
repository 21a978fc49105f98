import java.io.BufferedReader;
import java.io.IOException;
import java.io.Reader;
import java.io.Writer;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import worthsaving.market.Cleaning;
import worthsaving.market.CleaningRule;
import worthsaving.market.DatasetShape;
import worthsaving.market.PriceTableReader;
import worthsaving.quantity.Seed;
import worthsaving.valuation.FitSettings;
import worthsaving.valuation.PriceModel;
import worthsaving.valuation.PriceModelFitter;

/** Fits one model: FitModels DATA.csv SHAPE.properties MODEL.json [threads]. */
public final class FitModels {

    private FitModels() {}

    public static void main(String[] args) throws IOException {
        DatasetShape shape;
        try (Reader reader = Files.newBufferedReader(Path.of(args[1]))) {
            shape = DatasetShape.read(reader, args[1]);
        }
        List<CleaningRule> rules;
        try (Reader reader = Files.newBufferedReader(Path.of("shared/market/cleaning.csv"))) {
            rules = CleaningRule.read(reader, "cleaning.csv");
        }
        Cleaning cleaning;
        try (BufferedReader reader = Files.newBufferedReader(Path.of(args[0]))) {
            cleaning = Cleaning.clean(PriceTableReader.read(reader, shape), rules);
        }
        int threads = args.length > 3 ? Integer.parseInt(args[3]) : 2;
        long start = System.nanoTime();
        PriceModel model = PriceModelFitter.fit(
                cleaning,
                FitSettings.defaults().withThreads(threads),
                Seed.DEFAULT,
                (step, share) -> System.err.printf("%3.0f %% %s%n", 100 * share, step),
                () -> false);
        System.err.printf("fitted in %.1f s%n", (System.nanoTime() - start) / 1e9);
        try (Writer writer = Files.newBufferedWriter(Path.of(args[2]))) {
            model.write(writer);
        }
        Files.writeString(Path.of(args[2].replace(".json", ".md")), model.card().toMarkdown());
        System.err.printf("%s: %,d bytes%n", args[2], Files.size(Path.of(args[2])));
    }
}
