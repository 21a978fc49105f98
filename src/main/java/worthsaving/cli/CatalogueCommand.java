package worthsaving.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.ParentCommand;
import picocli.CommandLine.Spec;
import worthsaving.catalog.Catalogue;
import worthsaving.catalog.CatalogueFault;
import worthsaving.catalog.CatalogueReading;
import worthsaving.report.CsvWriter;
import worthsaving.report.JsonReport;

/** What can break and what mends it. */
@Command(
        name = "catalogue",
        description = "The trade knowledge that verdicts rest on.",
        mixinStandardHelpOptions = true,
        subcommands = {CatalogueCommand.Check.class, CatalogueDiffCommand.class})
final class CatalogueCommand {

    @ParentCommand
    private Main main;

    Main main() {
        return main;
    }

    @Command(
            name = "check",
            description = "Reads a catalogue and lists every fault with file and line.",
            mixinStandardHelpOptions = true,
            exitCodeListHeading = "%nExit codes:%n",
            exitCodeList = {"0:no fault", "3:there is no such folder", "4:faults, all listed"})
    static final class Check implements Callable<Integer> {

        @Parameters(
                arity = "0..1",
                paramLabel = "FOLDER",
                description = "Folder with the tables (default: " + CatalogueFiles.FOLDER + " of the project).")
        private Path folder;

        @Mixin
        private Output output;

        @Spec
        private CommandSpec spec;

        @Override
        public Integer call() throws IOException {
            Path where = folder == null ? Resources.find().path(CatalogueFiles.FOLDER) : folder;
            if (!Files.isDirectory(where)) {
                throw new UserError(ExitCode.FILE_UNUSABLE, "There is no folder " + where);
            }
            CatalogueReading reading = CatalogueFiles.read(where);
            PrintWriter out = spec.commandLine().getOut();
            Map<String, Integer> counts =
                    reading instanceof CatalogueReading.Valid valid ? counts(valid.catalogue()) : Map.of();
            if (output.json()) {
                new JsonReport(out, "worthsaving/catalogue-check", 1)
                        .field("counts", counts)
                        .field("faults", reading.faults())
                        .end();
            } else if (output.csv()) {
                CsvWriter csv = new CsvWriter(out, "file", "line", "column", "message");
                for (CatalogueFault f : reading.faults()) {
                    csv.row(f.file(), f.line(), f.column(), f.message());
                }
            } else {
                reading.faults().forEach(out::println);
                out.println(reading.faults().isEmpty() ? "No fault: " + list(counts)
                        : reading.faults().size() + " fault(s)");
            }
            return reading.faults().isEmpty() ? ExitCode.OK : ExitCode.INSTALLATION_FAULTY;
        }

        private static Map<String, Integer> counts(Catalogue c) {
            Map<String, Integer> counts = new LinkedHashMap<>();
            counts.put("failure items", c.items().size());
            counts.put("damage links", c.damage().size());
            counts.put("findings", c.findings().size());
            counts.put("finding links", c.findingLinks().size());
            counts.put("access steps", c.accessSteps().size());
            counts.put("remedies", c.remedies().size());
            counts.put("tools", c.tools().size());
            counts.put("money lines", c.moneyLines().size());
            return counts;
        }

        private static String list(Map<String, Integer> counts) {
            List<String> parts = counts.entrySet().stream().map(e -> e.getValue() + " " + e.getKey()).toList();
            return String.join(", ", parts);
        }
    }
}
