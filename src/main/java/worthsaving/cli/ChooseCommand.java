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
import worthsaving.ranking.Budget;
import worthsaving.ranking.Judge;
import worthsaving.ranking.LotChoice;
import worthsaving.ranking.LotRanking;
import worthsaving.ranking.MarketRisk;
import worthsaving.ranking.Order;
import worthsaving.ranking.Ranked;
import worthsaving.ranking.Standing;
import worthsaving.report.ChoiceReport;
import worthsaving.report.LotReport;

/** Chooses the cars of a lot to buy together. */
@Command(
        name = "choose",
        description = "Judges every listing of a table and chooses the set to buy together: greatest expected profit "
                + "under your cash, bays and own hours, special tools bought once. Says what was left out and why.",
        mixinStandardHelpOptions = true)
final class ChooseCommand implements Callable<Integer> {

    private static final int MOST = 200;

    @ParentCommand
    private Main main;

    @Mixin
    private JudgingInput input;

    @Mixin
    private ExportForm export;

    @Option(names = "--cash", paramLabel = "MONEY",
            description = "Cash for buying, fetching and mending all of them (default: no limit).")
    private double cash = Double.POSITIVE_INFINITY;

    @Option(names = "--bays", paramLabel = "N", description = "Cars in the workshop at once (default: no limit).")
    private Integer bays;

    @Option(names = "--hours", paramLabel = "HOURS", description = "Own hours for all of them (default: no limit).")
    private double hours = Double.POSITIVE_INFINITY;

    @Option(names = "--market", paramLabel = "SHARE",
            description = "How far all sale values move together, one standard deviation (default: 0.10, a guess).")
    private double market = MarketRisk.USUAL_SPREAD;

    @Option(names = "--above-limit",
            description = "Let cars count that ask more than the most to pay, as long as they are expected to earn.")
    private boolean aboveLimit;

    @Spec
    private CommandSpec spec;

    @Override
    public Integer call() throws IOException {
        input.mustBeThere();
        PrintWriter out = spec.commandLine().getOut();
        PrintWriter err = spec.commandLine().getErr();
        Budget budget = budget();
        JudgingInput.Opened opened = input.open(MOST, err);
        ReadLot lot = opened.lot();
        Judge judge = opened.judge(input.settings(opened.catalogue(), main.seed()));
        Ranked ranked = new LotRanking(judge).rank(lot.listings(), Order.EXPECTED_PROFIT,
                new ProgressLine(err, lot.listings().size()), () -> false);
        List<Standing> standings = ranked.places().stream().map(Ranked.Place::standing).toList();
        ChoiceReport report = new ChoiceReport(LotChoice.of(standings, budget,
                new LotChoice.Settings(aboveLimit, market, main.seed())), export.guard());
        export.print(report, report::text, out, opened.note());
        LotReport.refusals(err, ranked.refused());
        return lot.complete() && ranked.refused().isEmpty() ? ExitCode.OK : ExitCode.SOME_ROWS_REFUSED;
    }

    private Budget budget() {
        if (!(market >= 0) || Double.isInfinite(market)) {
            throw new UserError(ExitCode.USAGE, "--market must be a share of zero or more, such as 0.1, not " + market);
        }
        try {
            return new Budget(cash, bays == null ? Double.POSITIVE_INFINITY : bays, hours);
        } catch (IllegalArgumentException e) {
            throw new UserError(ExitCode.USAGE, e.getMessage());
        }
    }
}
