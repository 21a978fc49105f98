package worthsaving.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;
import worthsaving.intake.IntakeFault;
import worthsaving.intake.LotEntry;
import worthsaving.intake.LotSink;
import worthsaving.intake.LotSummary;
import worthsaving.intake.RefusedRow;
import worthsaving.report.PreviewReport;
import worthsaving.report.TextTable;

/** Shows what a table would bring in before anything is judged. */
@Command(
        name = "preview",
        description = "Shows what would be imported from a table: what each column was taken for and why, what is not "
                + "used, the first rows as read, and the first faults.",
        mixinStandardHelpOptions = true)
final class LotPreviewCommand implements Callable<Integer> {

    @Mixin
    private ListingSource source;

    @Option(names = "--rows", paramLabel = "N", defaultValue = "5",
            description = "Rows and faults to show (default: ${DEFAULT-VALUE}).")
    private int rows;

    @Spec
    private CommandSpec spec;

    @Override
    public Integer call() throws IOException {
        source.mustBeThere();
        PrintWriter out = spec.commandLine().getOut();
        PrintWriter err = spec.commandLine().getErr();
        Resources resources = Resources.find();
        First first = new First(Math.max(0, rows));
        LotSummary summary = source.read(
                VocabularyFiles.ofTables(resources, CatalogueFiles.load(resources), Set.of()), first, err);
        if (!summary.readable()) {
            first.faults.forEach(fault -> err.println(TextTable.plain(fault.toString())));
            return ExitCode.FILE_UNUSABLE;
        }
        new PreviewReport(summary, first.entries).text(out);
        first.faults.forEach(fault -> out.println(TextTable.plain(fault.toString())));
        return ExitCode.OK;
    }

    /** Keeps the first few of each. */
    private static final class First implements LotSink {
        private final int most;
        private final List<LotEntry> entries = new ArrayList<>();
        private final List<IntakeFault> faults = new ArrayList<>();

        private First(int most) {
            this.most = most;
        }

        @Override
        public void good(LotEntry entry) {
            if (entries.size() < most) {
                entries.add(entry);
            }
        }

        @Override
        public void refused(RefusedRow row) {
            row.faults().forEach(this::warning);
        }

        @Override
        public void warning(IntakeFault fault) {
            boolean wholeFile = fault.effect() == IntakeFault.Effect.FILE_REFUSED;
            if (faults.size() < most || wholeFile) {
                faults.add(fault);
            }
        }
    }
}
