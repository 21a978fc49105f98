package worthsaving.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.Writer;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Set;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;
import worthsaving.intake.LotSummary;
import worthsaving.intake.Vocabulary;

/** Tables of listings. */
@Command(
        name = "lot",
        description = "Tables of listings.",
        mixinStandardHelpOptions = true,
        subcommands = {LotCommand.Check.class, LotPreviewCommand.class})
final class LotCommand {

    @Command(
            name = "check",
            description = "Reads a table of listings and lists every fault with row and column, judging nothing.",
            mixinStandardHelpOptions = true,
            exitCodeListHeading = "%nExit codes:%n",
            exitCodeList = {"0:no row refused", "1:some rows refused", "3:the file cannot be read as listings"})
    static final class Check implements Callable<Integer> {

        @Mixin
        private ListingSource source;

        @Mixin
        private Output output;

        @Option(
                names = "--refused",
                paramLabel = "FILE",
                description = "Write the refused rows there as they came, under their header, for mending.")
        private Path refusedFile;

        @Option(
                names = "--bad-rows",
                paramLabel = "FILE",
                description = "Write the refused rows there as CSV with the reason in a last column, safe to open in a "
                        + "spreadsheet.")
        private Path badRowsFile;

        @Spec
        private CommandSpec spec;

        @Override
        public Integer call() throws IOException {
            source.mustBeThere();
            PrintWriter out = spec.commandLine().getOut();
            PrintWriter err = spec.commandLine().getErr();
            Resources resources = Resources.find();
            Vocabulary vocabulary = VocabularyFiles.ofTables(resources, CatalogueFiles.load(resources), Set.of());
            LotSummary summary;
            try (Writer refused = target("--refused", refusedFile); Writer bad = target("--bad-rows", badRowsFile)) {
                FaultPrinter printer = FaultPrinter.of(output, out, refused);
                printer.badRowsTo(bad);
                summary = source.read(vocabulary, printer, err);
                printer.end(summary);
            }
            if (!summary.readable()) {
                return ExitCode.FILE_UNUSABLE;
            }
            return summary.refused() > 0 ? ExitCode.SOME_ROWS_REFUSED : ExitCode.OK;
        }

        private Writer target(String option, Path to) throws IOException {
            if (to == null) {
                return Writer.nullWriter();
            }
            if (Files.exists(to) && Files.exists(source.file()) && Files.isSameFile(to, source.file())) {
                throw new UserError(ExitCode.USAGE, option + " must not name the table that is read");
            }
            return Files.newBufferedWriter(to);
        }
    }
}
