package worthsaving.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Set;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;
import worthsaving.catalog.Catalogue;
import worthsaving.intake.ScanReport;
import worthsaving.intake.Vocabulary;
import worthsaving.quantity.Seed;
import worthsaving.ranking.JudgeSettings;
import worthsaving.report.CodesReport;
import worthsaving.vehicle.Listing;

/** One listing of a table, by its id. */
final class OneListing {

    private static final int MOST = 1_000_000;

    @Mixin
    private JudgingInput input;

    @Option(names = "--id", paramLabel = "ID", description = "Which listing (default: the first).")
    private String id;

    @Spec(Spec.Target.MIXEE)
    private CommandSpec spec;

    @Option(names = "--codes", paramLabel = "CODES", description = "Trouble codes read out of the car, such as "
            + "\"P0016 P0300 pending\"; they count as seen with own eyes.")
    private String codes;

    @Option(names = "--scan", paramLabel = "FILE", description = "A scan tool's report as text; as --codes.")
    private Path scan;

    JudgingInput.Opened open(PrintWriter err) throws IOException {
        return input.open(MOST, err);
    }

    /** Catalogue and price model alone, for a car that is in no table. */
    JudgingInput.Opened openWithoutTable() throws IOException {
        return input.openWithoutTable();
    }

    /** The table, or what stands in its place. */
    Path file() {
        return input.file();
    }

    /** @throws UserError when there is no such listing */
    Listing in(JudgingInput.Opened opened) throws IOException {
        return scanned(opened.lot().one(id, input.file()), opened);
    }

    /** With the trouble codes read out of it. */
    Listing scanned(Listing read, JudgingInput.Opened opened) throws IOException {
        Listing listing = read;
        if (codes != null) {
            listing = withCodes(listing, codes, opened, "--codes");
        }
        return scan == null ? listing : withCodes(listing, TextFiles.read(scan), opened, scan.toString());
    }

    private Listing withCodes(Listing listing, String text, JudgingInput.Opened opened, String where) {
        ScanReport report = ScanReport.read(text);
        if (report.codes().isEmpty()) {
            throw new UserError(ExitCode.USAGE, "There is no trouble code in " + where + "; a code looks like P0016");
        }
        Vocabulary vocabulary = VocabularyFiles.ofTables(Resources.find(), opened.catalogue(), Set.of());
        PrintWriter err = spec.commandLine().getErr();
        new CodesReport(report, vocabulary).lines().forEach(line -> err.println(line.code() + " " + line.status()
                + ", " + line.use()));
        return listing.withSeen(report.observations(vocabulary));
    }

    LocalDate today() {
        return input.today();
    }

    JudgeSettings settings(Catalogue catalogue, Seed seed) {
        return input.settings(catalogue, seed);
    }
}
