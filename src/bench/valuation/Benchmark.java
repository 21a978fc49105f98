import java.io.IOException;
import java.io.Reader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import worthsaving.market.Cleaning;
import worthsaving.market.CleaningRule;
import worthsaving.market.DatasetShape;
import worthsaving.market.PriceRow;
import worthsaving.market.PriceTableReader;
import worthsaving.quantity.Distribution;
import worthsaving.quantity.Seed;
import worthsaving.valuation.FitSettings;
import worthsaving.valuation.PriceModel;
import worthsaving.valuation.PriceModelFitter;

/**
 * Fits on one file and writes the 10, 50 and 90 % quantile of every row of another:
 * Benchmark TRAIN.csv TEST.csv SHAPE.properties OUT.csv all|distinct.
 * "all" leaves repeated adverts in, as the other libraries see them.
 */
public final class Benchmark {

    private Benchmark() {}

    public static void main(String[] args) throws IOException {
        DatasetShape shape;
        try (Reader reader = Files.newBufferedReader(Path.of(args[2]))) {
            shape = DatasetShape.read(reader, args[2]);
        }
        List<CleaningRule> rules;
        try (Reader reader = Files.newBufferedReader(Path.of("shared/market/cleaning.csv"))) {
            rules = CleaningRule.read(reader, "cleaning.csv");
        }
        boolean all = args[4].equals("all");
        rules = rules.stream().filter(r -> !all || r.test() != CleaningRule.Test.REPEAT).toList();
        Cleaning train;
        try (Reader reader = Files.newBufferedReader(Path.of(args[0]))) {
            train = Cleaning.clean(PriceTableReader.read(reader, shape), rules);
        }
        List<PriceRow> test;
        List<CleaningRule> blanks = rules.stream().filter(r -> r.action() == CleaningRule.Action.BLANK).toList();
        try (Reader reader = Files.newBufferedReader(Path.of(args[1]))) {
            test = Cleaning.clean(PriceTableReader.read(reader, shape), blanks).table().rows();
        }
        long start = System.nanoTime();
        PriceModel model = PriceModelFitter.fit(
                train, FitSettings.defaults(), Seed.DEFAULT, (step, share) -> {}, () -> false);
        double seconds = (System.nanoTime() - start) / 1e9;
        StringBuilder out = new StringBuilder("line,q10,q50,q90\n");
        for (PriceRow row : test) {
            Distribution price = model.askingPrice(row);
            out.append(String.format(Locale.ROOT, "%d,%.6g,%.6g,%.6g%n", row.line(), price.quantile(0.1),
                    price.quantile(0.5), price.quantile(0.9)));
        }
        Files.writeString(Path.of(args[3]), out);
        System.out.printf(Locale.ROOT, "%.1f%n", seconds);
    }
}
