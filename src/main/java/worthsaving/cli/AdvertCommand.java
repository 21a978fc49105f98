package worthsaving.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.ParentCommand;
import picocli.CommandLine.Spec;
import worthsaving.catalog.Catalogue;
import worthsaving.intake.advert.AdvertReader;
import worthsaving.ranking.Appraisal;
import worthsaving.ranking.Judge;
import worthsaving.ranking.LotRanking;
import worthsaving.ranking.Ranked;
import worthsaving.report.AdvertReport;
import worthsaving.report.CaseReport;
import worthsaving.report.CsvWriter;
import worthsaving.report.LotReport;
import worthsaving.report.TextTable;
import worthsaving.report.Words;
import worthsaving.shell.MarketGround;
import worthsaving.vehicle.Listing;

/** Reads adverts: of one it shows what was read and judges the car, several it puts in order. */
@Command(
        name = "advert",
        description = "Reads adverts out of text, HTML and mail files, or all such files of a folder. One advert is "
                + "shown with the words each field came from and judged; several, also in one text, are ranked. What "
                + "cannot be read is listed with its reason.",
        mixinStandardHelpOptions = true)
final class AdvertCommand implements Callable<Integer> {

    @ParentCommand
    private Main main;

    @Parameters(paramLabel = "FILE|FOLDER", arity = "0..*", description = "Saved adverts; without one the text is "
            + "read from standard input.")
    private List<Path> files = List.of();

    @Mixin
    private JudgeOptions options;

    @Mixin
    private OrderOptions order;

    @Mixin
    private Output output;

    @Option(names = "--today", paramLabel = "DATE", description = "Day that ages are counted to (default: today).")
    private LocalDate today = LocalDate.now();

    @Option(names = "--read-only", description = "Show what was read and judge nothing.")
    private boolean readOnly;

    @Spec
    private CommandSpec spec;

    @Override
    public Integer call() throws IOException {
        Resources resources = Resources.find();
        PrintWriter out = spec.commandLine().getOut();
        PrintWriter err = spec.commandLine().getErr();
        SavedAdverts adverts = new SavedAdverts(new AdvertReader(VocabularyFiles.load(resources)), today, err);
        if (files.isEmpty()) {
            adverts.standardInput();
        }
        for (Path file : files) {
            adverts.add(file);
        }
        if (adverts.entries().isEmpty()) {
            throw new UserError(ExitCode.FILE_UNUSABLE, "There is no advert that can be read");
        }
        if (readOnly) {
            show(CatalogueFiles.load(resources), adverts.entries(), out);
        } else if (adverts.entries().size() == 1 && adverts.refused() == 0) {
            one(resources, adverts.entries().get(0), out);
        } else {
            several(resources, adverts.entries(), out, err);
        }
        return adverts.refused() == 0 ? ExitCode.OK : ExitCode.SOME_ROWS_REFUSED;
    }

    private static void show(Catalogue catalogue, List<SavedAdverts.Entry> entries, PrintWriter out) throws IOException {
        for (SavedAdverts.Entry entry : entries) {
            if (entries.size() > 1) {
                out.println(TextTable.plain(entry.id() + ": " + entry.origin()));
            }
            new AdvertReport(entry.reading(), catalogue).text(out);
        }
    }

    private void one(Resources resources, SavedAdverts.Entry entry, PrintWriter out) throws IOException {
        Catalogue asWritten = CatalogueFiles.load(resources);
        MarketGround ground = options.market(resources, today);
        Catalogue catalogue = ground.in(asWritten);
        Judge judge = new Judge(catalogue, ground.valuer()::forecast, options.settings(catalogue, main.seed()));
        Appraisal appraisal = JudgingInput.appraisal(
                judge.judge(entry.reading().toListing("advert", entry.origin())), "It");
        CaseReport report = new CaseReport(appraisal, catalogue);
        if (output.json()) {
            report.json(out);
            return;
        }
        new AdvertReport(entry.reading(), catalogue).text(out);
        out.println();
        out.println(ground.note(asWritten));
        report.summary(out);
    }

    private void several(Resources resources, List<SavedAdverts.Entry> entries, PrintWriter out, PrintWriter err)
            throws IOException {
        Catalogue asWritten = CatalogueFiles.load(resources);
        MarketGround ground = options.market(resources, today);
        Catalogue catalogue = ground.in(asWritten);
        Judge judge = new Judge(catalogue, ground.valuer()::forecastWithoutReasons, options.settings(catalogue, main.seed()));
        List<Listing> listings = entries.stream().map(e -> e.reading().toListing(e.id(), e.origin())).toList();
        Ranked ranked = new LotRanking(judge)
                .rank(listings, order.ordering(), new ProgressLine(err, listings.size()), () -> false);
        LotReport report = new LotReport(ranked, catalogue);
        if (output.json()) {
            report.json(out);
        } else if (output.csv()) {
            report.rows(header -> new CsvWriter(out, header));
        } else {
            report.table(out, listings.size());
            out.println();
            entries.forEach(e -> out.println(TextTable.plain(e.id() + ": " + e.origin())));
            out.println(ground.note(asWritten));
            out.println(Words.ESTIMATES);
        }
        LotReport.refusals(err, ranked.refused());
    }
}
