import com.sun.management.OperatingSystemMXBean;
import java.io.IOException;
import java.io.Reader;
import java.lang.management.ManagementFactory;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import worthsaving.market.Cleaning;
import worthsaving.market.CleaningRule;
import worthsaving.market.DatasetShape;
import worthsaving.market.PriceRow;
import worthsaving.market.PriceTableReader;
import worthsaving.quantity.Distribution;
import worthsaving.quantity.Seed;
import worthsaving.valuation.Ensemble;
import worthsaving.valuation.FitSettings;
import worthsaving.valuation.FitSettings.Apart;
import worthsaving.valuation.PriceModel;
import worthsaving.valuation.PriceModelFitter;

/**
 * Fits on one file and writes what it predicts for every row of another, with the facts that pictures need:
 * Benchmark TRAIN.csv TEST.csv SHAPE.properties OUT.csv adverts|cars standard|quick|smile.
 * "adverts" leaves repeated adverts in and holds out single rows, as the other libraries see them.
 * Prints wall seconds and processor seconds of the whole fit.
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
        Apart apart = Apart.valueOf(args[4].toUpperCase(Locale.ROOT));
        rules = rules.stream()
                .filter(r -> apart == Apart.CARS || r.test() != CleaningRule.Test.REPEAT)
                .toList();
        List<CleaningRule> blanks = rules.stream().filter(r -> r.action() == CleaningRule.Action.BLANK).toList();
        Cleaning train = clean(args[0], shape, rules);
        List<PriceRow> test = clean(args[1], shape, blanks).table().rows();
        OperatingSystemMXBean machine = (OperatingSystemMXBean) ManagementFactory.getOperatingSystemMXBean();
        long start = System.nanoTime();
        long busy = machine.getProcessCpuTime();
        PriceModel model = PriceModelFitter.fit(
                train, settings(args[5]).with(apart), Seed.DEFAULT, (step, share) -> {}, () -> false);
        double seconds = (System.nanoTime() - start) / 1e9;
        double processor = (machine.getProcessCpuTime() - busy) / 1e9;
        StringBuilder out = new StringBuilder("line,make,age,miles,price,q10,q50,q90\n");
        for (PriceRow row : test) {
            Distribution price = model.askingPrice(row);
            out.append(String.format(Locale.ROOT, "%d,%s,%.2f,%.0f,%.6g,%.6g,%.6g,%.6g%n", row.line(), row.make(),
                    row.ageYears(), row.miles(), row.price(), price.quantile(0.1), price.quantile(0.5),
                    price.quantile(0.9)));
        }
        Files.writeString(Path.of(args[3]), out);
        System.out.printf(Locale.ROOT, "%.2f %.2f%n", seconds, processor);
    }

    private static FitSettings settings(String name) {
        return switch (name) {
            case "standard" -> FitSettings.defaults();
            case "quick" -> FitSettings.quick();
            case "smile" -> FitSettings.defaults().with(EnumSet.allOf(Ensemble.class));
            default -> throw new IllegalArgumentException("no setting is called " + name);
        };
    }

    private static Cleaning clean(String file, DatasetShape shape, List<CleaningRule> rules) throws IOException {
        try (Reader reader = Files.newBufferedReader(Path.of(file))) {
            return Cleaning.clean(PriceTableReader.read(reader, shape), rules);
        }
    }
}
