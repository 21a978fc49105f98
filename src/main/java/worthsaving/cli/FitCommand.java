package worthsaving.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.ParentCommand;
import picocli.CommandLine.Spec;
import worthsaving.market.Cleaning;
import worthsaving.valuation.FitSettings;
import worthsaving.valuation.ModelCard;
import worthsaving.valuation.PriceModel;
import worthsaving.valuation.PriceModelFitter;

/** Fits a price model on a table of used cars. */
@Command(
        name = "fit",
        description = "Fits a price model on a table of used-car prices and writes it with its card beside it. Without "
                + "SHAPE the columns are matched by name and content, and what was matched is told. The same table, shape "
                + "and seed give the same file, byte for byte.",
        mixinStandardHelpOptions = true)
final class FitCommand implements Callable<Integer> {

    @ParentCommand
    private Main main;

    @Parameters(index = "0", paramLabel = "DATA", description = "Table of prices, CSV.")
    private Path data;

    @Parameters(index = "1..*", arity = "1..2", paramLabel = "[SHAPE] MODEL",
            description = "SHAPE: how to read it, a name in shared/market such as us_classifieds_2018_19, or a file. "
                    + "MODEL: file to write, such as models/us.json.")
    private List<String> shapeAndModel = new ArrayList<>();

    @Mixin
    private MatchOptions match;

    @Option(names = "--threads", paramLabel = "N", description = "Fits side by side; the result does not depend on it.")
    private int threads = Runtime.getRuntime().availableProcessors();

    @Spec
    private CommandSpec spec;

    @Override
    public Integer call() throws IOException {
        PrintWriter err = spec.commandLine().getErr();
        if (shapeAndModel.size() > 2) {
            throw new UserError(ExitCode.USAGE, "Give the table, its shape if it has one, and the model to write; not "
                    + shapeAndModel);
        }
        Path model = Path.of(shapeAndModel.get(shapeAndModel.size() - 1));
        String shape = shapeAndModel.size() > 1 ? shapeAndModel.get(0) : null;
        if (!model.toString().endsWith(".json")) {
            throw new UserError(ExitCode.USAGE, "A model is kept as JSON: give a file such as mine.json, not " + model);
        }
        Cleaning cleaning = PriceData.of(Resources.find(), data, shape, match, err).clean(err);
        PriceModel fitted;
        try {
            FitSettings settings = FitSettings.defaults().withThreads(Math.max(1, threads));
            fitted = PriceModelFitter.fit(cleaning, settings, main.seed(),
                    (step, share) -> err.printf("%3.0f %% %s%n", 100 * share, step), () -> false);
        } catch (IllegalArgumentException e) {
            throw new UserError(ExitCode.FILE_UNUSABLE, e.getMessage());
        }
        StringWriter text = new StringWriter();
        fitted.write(text);
        write(model, text.toString());
        Path card = model.resolveSibling(model.getFileName().toString().replaceFirst("\\.json$", "") + ".md");
        write(card, fitted.card().toMarkdown());
        ModelCard about = fitted.card();
        spec.commandLine().getOut().printf(Locale.ROOT, "Wrote %s and %s: market %s, %s, %s prices of %s to %s, %,d rows%n",
                model, card, about.market(), about.currency(), about.priceKind().toLowerCase(Locale.ROOT), about.firstDay(),
                about.lastDay(), about.rows());
        return ExitCode.OK;
    }

    /** By way of a file beside it, so that a model is never half-written. */
    private static void write(Path file, String text) throws IOException {
        Files.createDirectories(file.toAbsolutePath().getParent());
        AtomicFile.write(file, out -> out.write(text.getBytes(StandardCharsets.UTF_8)));
    }

    /** Reports on a table of prices without fitting anything. */
    @Command(
            name = "data",
            description = "Reads a table of used-car prices, cleans it, and reports what it holds and what was dropped.",
            mixinStandardHelpOptions = true)
    static final class Report implements Callable<Integer> {

        @Parameters(index = "0", paramLabel = "DATA", description = "Table of prices, CSV.")
        private Path data;

        @Parameters(index = "1", arity = "0..1", paramLabel = "SHAPE",
                description = "How to read it: a name in shared/market, or a file; without it the columns are matched.")
        private String shape;

        @Mixin
        private MatchOptions match;

        @Spec
        private CommandSpec spec;

        @Override
        public Integer call() throws IOException {
            PrintWriter err = spec.commandLine().getErr();
            Cleaning cleaning = PriceData.of(Resources.find(), data, shape, match, err).clean(err);
            spec.commandLine().getOut().print(cleaning.report().toMarkdown());
            return ExitCode.OK;
        }
    }
}
