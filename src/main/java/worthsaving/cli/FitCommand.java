package worthsaving.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.ParentCommand;
import picocli.CommandLine.Spec;
import worthsaving.market.Cleaning;
import worthsaving.valuation.FitSettings;
import worthsaving.valuation.PriceModel;
import worthsaving.valuation.PriceModelFitter;

/** Fits a price model on a table of used cars. */
@Command(
        name = "fit",
        description = "Fits a price model on a table of used-car prices and writes it with its card beside it. The same "
                + "table, shape and seed give the same file, byte for byte.",
        mixinStandardHelpOptions = true)
final class FitCommand implements Callable<Integer> {

    @ParentCommand
    private Main main;

    @Parameters(index = "0", paramLabel = "DATA", description = "Table of prices, CSV.")
    private Path data;

    @Parameters(index = "1", paramLabel = "SHAPE",
            description = "How to read it: a name in shared/market, such as us_classifieds_2018_19, or a file.")
    private String shape;

    @Parameters(index = "2", paramLabel = "MODEL", description = "File to write, such as models/us.json.")
    private Path model;

    @Option(names = "--threads", paramLabel = "N", description = "Fits side by side; the result does not depend on it.")
    private int threads = Runtime.getRuntime().availableProcessors();

    @Spec
    private CommandSpec spec;

    @Override
    public Integer call() throws IOException {
        PrintWriter err = spec.commandLine().getErr();
        PriceData prices = PriceData.of(Resources.find(), shape);
        Cleaning cleaning = prices.clean(data);
        cleaning.table().badRows().stream().limit(20).forEach(bad -> err.println(data.getFileName() + ": " + bad));
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
        spec.commandLine().getOut().println("Wrote " + model + " and " + card);
        return ExitCode.OK;
    }

    /** By way of a file beside it, so that a model is never half-written. */
    private static void write(Path file, String text) throws IOException {
        Path folder = file.toAbsolutePath().getParent();
        Files.createDirectories(folder);
        Path part = Files.createTempFile(folder, file.getFileName().toString(), ".part");
        try {
            Files.writeString(part, text, StandardCharsets.UTF_8);
            Files.move(part, file, StandardCopyOption.REPLACE_EXISTING);
        } finally {
            Files.deleteIfExists(part);
        }
    }

    /** Reports on a table of prices without fitting anything. */
    @Command(
            name = "data",
            description = "Reads a table of used-car prices, cleans it, and reports what it holds and what was dropped.",
            mixinStandardHelpOptions = true)
    static final class Report implements Callable<Integer> {

        @Parameters(index = "0", paramLabel = "DATA", description = "Table of prices, CSV.")
        private Path data;

        @Parameters(index = "1", paramLabel = "SHAPE", description = "How to read it: a name in shared/market, or a file.")
        private String shape;

        @Spec
        private CommandSpec spec;

        @Override
        public Integer call() throws IOException {
            Cleaning cleaning = PriceData.of(Resources.find(), shape).clean(data);
            spec.commandLine().getOut().print(cleaning.report().toMarkdown());
            return ExitCode.OK;
        }
    }
}
