package worthsaving.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.concurrent.ForkJoinPool;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParentCommand;
import picocli.CommandLine.Spec;
import worthsaving.intake.LotEntry;
import worthsaving.ranking.Judge;
import worthsaving.ranking.LotRanking;
import worthsaving.ranking.Scored;
import worthsaving.report.CsvWriter;
import worthsaving.report.ScoreReport;
import worthsaving.vehicle.Listing;

/** Judges every listing by itself and writes as it goes, so that tables of any size can be split among processes. */
@Command(
        name = "score",
        description = {"Judges every listing of a table and writes a line of CSV for each, in the order of the table, without "
            + "putting them in order. Memory does not grow with the table, and no line depends on another: split a "
            + "table, score the parts wherever you like, and join the results.", "Rows that cannot be used are listed on "
            + "standard error."},
        mixinStandardHelpOptions = true)
final class ScoreCommand implements Callable<Integer> {

    /** Listings judged between two writes: enough for many cores, few enough to hold. */
    private static final int PART = 256;

    @ParentCommand
    private Main main;

    @Mixin
    private JudgingInput input;

    @Mixin
    private VinOption vin;

    @Option(names = "--threads", paramLabel = "N",
            description = "Cores to judge on (default: all). The results are the same on any number.")
    private int threads = Runtime.getRuntime().availableProcessors();

    @Spec
    private CommandSpec spec;

    @Override
    public Integer call() throws IOException {
        input.mustBeThere();
        if (threads < 1) {
            throw new UserError(ExitCode.USAGE, "--threads must be at least 1, not " + threads);
        }
        PrintWriter err = spec.commandLine().getErr();
        JudgingInput.Opened opened = input.openWithoutTable();
        Judge judge = opened.judge(input.settings(opened.catalogue(), main.seed()));
        PrintWriter out = spec.commandLine().getOut();
        ScoreReport report = new ScoreReport(vin.guard(), header -> new CsvWriter(out, header));
        ForkJoinPool pool = new ForkJoinPool(threads);
        try {
            Scoring scoring = new Scoring(err, new LotRanking(judge), pool, report);
            input.read(opened, scoring, err);
            return scoring.complete() ? ExitCode.OK : ExitCode.SOME_ROWS_REFUSED;
        } catch (UncheckedIOException e) {
            throw e.getCause();
        } finally {
            pool.shutdownNow();
        }
    }

    /** Gathers a part, judges it, writes it, and begins the next. */
    private static final class Scoring extends FaultTeller {
        private final LotRanking ranking;
        private final ForkJoinPool pool;
        private final ScoreReport report;
        private final List<Listing> part = new ArrayList<>(PART);
        private boolean allJudged = true;

        private Scoring(PrintWriter err, LotRanking ranking, ForkJoinPool pool, ScoreReport report) {
            super(err);
            this.ranking = ranking;
            this.pool = pool;
            this.report = report;
        }

        @Override
        public void good(LotEntry entry) {
            part.add(entry.listing());
            kept();
            if (part.size() == PART) {
                flush();
            }
        }

        @Override
        void end() {
            flush();
            super.end();
        }

        private void flush() {
            List<Listing> listings = List.copyOf(part);
            part.clear();
            List<Scored> scored = pool.submit(() -> ranking.score(listings, done -> { }, () -> false)).join();
            try {
                for (Scored line : scored) {
                    allJudged &= line.standing().isPresent();
                    report.add(line);
                }
            } catch (IOException e) {
                throw new UncheckedIOException(e);
            }
        }

        boolean complete() {
            return noneRefused() && allJudged;
        }
    }
}
