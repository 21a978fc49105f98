package worthsaving.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParentCommand;
import picocli.CommandLine.Spec;
import worthsaving.catalog.Catalogue;
import worthsaving.ranking.Appraisal;
import worthsaving.ranking.Holding;
import worthsaving.ranking.Judge;
import worthsaving.report.CaseReport;
import worthsaving.report.PreventiveReport;
import worthsaving.vehicle.Listing;

/** Judges one listing, with everything the verdict rests on. */
@Command(
        name = "judge",
        description = "Judges one listing of a table: verdict, value, what may have failed, repair, ways out, checks.",
        mixinStandardHelpOptions = true)
class JudgeCommand implements Callable<Integer> {

    @ParentCommand
    private Main main;

    @Mixin
    private OneListing one;

    @Mixin
    private ExportForm export;

    @Option(names = "--keep-years", paramLabel = "YEARS", defaultValue = "1",
            description = "How long the car is kept, or answered for, once it runs: for what to renew while it is open "
                    + "(default: ${DEFAULT-VALUE}).")
    private double keepYears;

    @Option(names = "--miles-per-year", paramLabel = "MILES", defaultValue = "12000",
            description = "How far it is driven meanwhile (default: ${DEFAULT-VALUE}).")
    private double milesPerYear;

    @Spec
    private CommandSpec spec;

    @Override
    public Integer call() throws IOException {
        JudgingInput.Opened opened = one.open(spec.commandLine().getErr());
        Catalogue catalogue = opened.catalogue();
        Listing listing = one.in(opened);
        Holding holding = holding();
        Judge judge = new Judge(catalogue, opened.valuer()::forecast, one.settings(catalogue, main.seed()));
        Appraisal appraisal = JudgingInput.appraisal(judge.judge(listing), listing.id());
        print(new CaseReport(appraisal, catalogue,
                new PreventiveReport(judge.whileInThere(appraisal, holding), holding), export.guard()),
                spec.commandLine().getOut());
        return ExitCode.OK;
    }

    private Holding holding() {
        try {
            return new Holding(keepYears, milesPerYear);
        } catch (IllegalArgumentException e) {
            throw new UserError(ExitCode.USAGE, e.getMessage());
        }
    }

    private void print(CaseReport report, PrintWriter out) throws IOException {
        if (!export.print(report, out)) {
            text(report, out);
        }
    }

    void text(CaseReport report, PrintWriter out) throws IOException {
        report.summary(out);
    }

    /** The same listing with the reasons behind its figures. */
    @Command(
            name = "explain",
            description = "Explains a judgement: the value feature by feature, each failed item finding by finding, "
                    + "the most probable stories, and what was assumed.",
            mixinStandardHelpOptions = true)
    static final class Explain extends JudgeCommand {

        @Override
        void text(CaseReport report, PrintWriter out) throws IOException {
            report.reasons(out);
        }
    }
}
