package worthsaving.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParentCommand;
import picocli.CommandLine.Spec;
import worthsaving.catalog.Catalogue;
import worthsaving.ranking.Judge;
import worthsaving.ranking.LotRanking;
import worthsaving.ranking.Ordering;
import worthsaving.ranking.Ranked;
import worthsaving.report.LotReport;
import worthsaving.report.Words;

/** Judges every listing of a table and puts them in order. */
@Command(
        name = "rank",
        description = "Judges every listing of a table and prints them best first. Rows that cannot be used are "
                + "listed on standard error; the good ones are ranked all the same.",
        mixinStandardHelpOptions = true)
final class RankCommand implements Callable<Integer> {

    @ParentCommand
    private Main main;

    @Mixin
    private JudgingInput input;

    @Mixin
    private ExportForm export;

    @Mixin
    private OrderOptions order;

    @Option(names = "--top", paramLabel = "N", defaultValue = "50",
            description = "Rows of the table (default: ${DEFAULT-VALUE}; CSV, TSV, Markdown and JSON always hold all).")
    private int top;

    @Option(names = "--explain", paramLabel = "N", defaultValue = "0",
            description = "Explain the best N and the worst N in words.")
    private int explain;

    @Option(names = "--most", paramLabel = "N", defaultValue = "20000",
            description = "Listings to judge at most; the rest of the table is not read (default: ${DEFAULT-VALUE}).")
    private int most;

    @Spec
    private CommandSpec spec;

    @Override
    public Integer call() throws IOException {
        input.mustBeThere();
        Ordering ordering = order.ordering();
        PrintWriter out = spec.commandLine().getOut();
        PrintWriter err = spec.commandLine().getErr();
        JudgingInput.Opened opened = input.open(most, err);
        Catalogue catalogue = opened.catalogue();
        ReadLot lot = opened.lot();
        Judge judge = opened.judge(input.settings(catalogue, main.seed()));
        int size = lot.listings().size();
        Ranked ranked = new LotRanking(judge).rank(lot.listings(), ordering, new ProgressLine(err, size), () -> false);
        LotReport report = new LotReport(ranked, catalogue, export.guard());
        if (!export.print(report, out)) {
            print(report, ranked, opened.note(), out);
        }
        LotReport.refusals(err, ranked.refused());
        return lot.complete() && ranked.refused().isEmpty() ? ExitCode.OK : ExitCode.SOME_ROWS_REFUSED;
    }

    private void print(LotReport report, Ranked ranked, String note, PrintWriter out) throws IOException {
        report.table(out, Math.max(0, top));
        int shown = Math.max(0, Math.min(explain, ranked.places().size()));
        List<Ranked.Place> best = ranked.places().subList(0, shown);
        List<Ranked.Place> worst =
                ranked.places().subList(Math.max(shown, ranked.places().size() - shown), ranked.places().size());
        for (List<Ranked.Place> part : List.of(best, worst)) {
            for (Ranked.Place place : part) {
                out.println();
                report.explanation(out, place);
            }
        }
        out.println();
        out.println(note);
        out.println(Words.ESTIMATES);
    }
}
