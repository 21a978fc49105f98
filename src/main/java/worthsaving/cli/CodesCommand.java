package worthsaving.cli;

import java.io.IOException;
import java.nio.file.Path;
import java.util.Set;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import worthsaving.intake.ScanReport;
import worthsaving.intake.Vocabulary;
import worthsaving.report.CodesReport;

/** Reads the trouble codes out of a scan report. */
@Command(
        name = "codes",
        description = "Finds the trouble codes in any text, such as a scan tool's report, and tells what each stands "
                + "for. Codes of the maker's own are shown and not used.",
        mixinStandardHelpOptions = true)
final class CodesCommand implements Callable<Integer> {

    @Parameters(paramLabel = "FILE", arity = "0..1", description = "Text file; without one standard input is read.")
    private Path file;

    @Mixin
    private Output output;

    @Spec
    private CommandSpec spec;

    @Override
    public Integer call() throws IOException {
        Resources resources = Resources.find();
        ScanReport scan = ScanReport.read(TextFiles.read(file));
        if (scan.codes().isEmpty()) {
            throw new UserError(ExitCode.FILE_UNUSABLE, "There is no trouble code in "
                    + (file == null ? "the text" : file) + "; a code looks like P0016");
        }
        Vocabulary vocabulary = VocabularyFiles.ofTables(resources, CatalogueFiles.load(resources), Set.of());
        output.print(new CodesReport(scan, vocabulary), spec.commandLine().getOut());
        return ExitCode.OK;
    }
}
