package worthsaving.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.ParentCommand;
import picocli.CommandLine.Spec;
import worthsaving.catalog.Catalogue;
import worthsaving.catalog.CatalogueDiff;
import worthsaving.catalog.CatalogueReading;
import worthsaving.ranking.Judge;
import worthsaving.ranking.LotRanking;
import worthsaving.ranking.Order;
import worthsaving.ranking.Ranked;
import worthsaving.ranking.Standing;
import worthsaving.report.LotReport;
import worthsaving.shell.MarketGround;

/** What differs between two catalogues, and what that does to a lot. */
@Command(
        name = "diff",
        description = "Lists what differs between two catalogues and how the verdicts on a lot change by it.",
        mixinStandardHelpOptions = true)
final class CatalogueDiffCommand implements Callable<Integer> {

    private static final int MOST = 1_000;

    @ParentCommand
    private CatalogueCommand parent;

    @Parameters(index = "0", paramLabel = "BEFORE", description = "Folder of the older catalogue.")
    private Path before;

    @Parameters(index = "1", paramLabel = "AFTER", description = "Folder of the newer catalogue.")
    private Path after;

    @Option(names = "--lot", paramLabel = "FILE", description = "Lot to judge (default: the invented sample lot).")
    private Path lot;

    @Option(names = "--today", paramLabel = "DATE", description = "Day that ages are counted to (default: today).")
    private LocalDate today = LocalDate.now();

    @Mixin
    private JudgeOptions options;

    @Spec
    private CommandSpec spec;

    @Override
    public Integer call() throws IOException {
        Catalogue old = load(before);
        Catalogue changed = load(after);
        PrintWriter out = spec.commandLine().getOut();
        List<CatalogueDiff.Change> changes = CatalogueDiff.between(old, changed);
        changes.forEach(out::println);
        out.println(changes.size() + " difference(s)");
        if (!changes.isEmpty()) {
            out.println();
            Resources resources = Resources.find();
            MarketGround ground = options.market(resources, today);
            ListingSource source =
                    new ListingSource(lot == null ? resources.path("shared/samples/lot.csv") : lot, today);
            LotReport.changes(out, standings(old, ground, source), standings(changed, ground, source));
        }
        return ExitCode.OK;
    }

    private static Catalogue load(Path folder) {
        if (!Files.isDirectory(folder)) {
            throw new UserError(ExitCode.FILE_UNUSABLE, "There is no folder " + folder);
        }
        CatalogueReading reading = CatalogueFiles.read(folder);
        if (reading instanceof CatalogueReading.Valid valid) {
            return valid.catalogue();
        }
        throw new UserError(ExitCode.INSTALLATION_FAULTY, folder + " has " + reading.faults().size()
                + " fault(s); see them with: worthsaving catalogue check " + folder);
    }

    private Map<String, Standing> standings(Catalogue asWritten, MarketGround ground, ListingSource source)
            throws IOException {
        Catalogue catalogue = ground.in(asWritten);
        PrintWriter err = spec.commandLine().getErr();
        ReadLot read = source.lot(Resources.find(), catalogue, ground, MOST, err);
        Judge judge = new Judge(catalogue, ground.valuer()::forecastWithoutReasons,
                options.settings(catalogue, parent.main().seed()));
        Ranked ranked = new LotRanking(judge)
                .rank(read.listings(), Order.EXPECTED_PROFIT, new ProgressLine(err, read.listings().size()), () -> false);
        Map<String, Standing> byId = new LinkedHashMap<>();
        ranked.places().forEach(p -> byId.put(p.standing().listing().id(), p.standing()));
        return byId;
    }
}
