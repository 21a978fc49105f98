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
        subcommands = LotCommand.Check.class)
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
            try (Writer refused = refusedFile == null ? Writer.nullWriter() : refusedWriter()) {
                FaultPrinter printer = FaultPrinter.of(output, out, refused);
                summary = source.read(vocabulary, printer, err);
                printer.end(summary);
            }
            if (!summary.readable()) {
                return ExitCode.FILE_UNUSABLE;
            }
            return summary.refused() > 0 ? ExitCode.SOME_ROWS_REFUSED : ExitCode.OK;
        }

        private Writer refusedWriter() throws IOException {
            if (Files.exists(refusedFile) && Files.exists(source.file())
                    && Files.isSameFile(refusedFile, source.file())) {
                throw new UserError(ExitCode.USAGE, "--refused must not name the table that is read");
            }
            return Files.newBufferedWriter(refusedFile);
        }
    }
}
