package worthsaving.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.util.Currency;
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
import worthsaving.ranking.Interview;
import worthsaving.ranking.Judge;
import worthsaving.ranking.ValueSource;
import worthsaving.report.CaseReport;
import worthsaving.report.PlanReport;
import worthsaving.report.PreventiveReport;
import worthsaving.report.QuestionsReport;
import worthsaving.vehicle.Listing;

/** Judges one listing, with everything the verdict rests on. */
@Command(
        name = "judge",
        description = "Judges one listing of a table: verdict, value, what may have failed, repair, ways out, checks.",
        mixinStandardHelpOptions = true)
class JudgeCommand implements Callable<Integer> {

    private static final int MOST_QUESTIONS = 8;

    @ParentCommand
    private Main main;

    @Mixin
    private OneListing one;

    @Mixin
    private PricedRows priced;

    @Mixin
    private ExportForm export;

    @Option(names = "--questions",
            description = "Print what to ask the seller, ready to copy, with what each answer would change.")
    private boolean questions;

    @Option(names = "--keep-years", paramLabel = "YEARS", defaultValue = "1",
            description = "How long the car is kept, or answered for, once it runs: for what to renew while it is open "
                    + "(default: ${DEFAULT-VALUE}).")
    private double keepYears;

    @Option(names = "--miles-per-year", paramLabel = "MILES", defaultValue = "12000",
            description = "How far it is driven meanwhile (default: ${DEFAULT-VALUE}).")
    private double milesPerYear;

    @Option(names = "--value-between", paramLabel = "LOW:HIGH",
            description = "What it fetches running by your own knowledge, one in ten below LOW and one in ten above "
                    + "HIGH, instead of the price model's value.")
    private String valueBetween;

    @Spec
    private CommandSpec spec;

    @Override
    public Integer call() throws IOException {
        PrintWriter err = spec.commandLine().getErr();
        JudgingInput.Opened opened = one.open(err);
        Catalogue catalogue = opened.catalogue();
        Listing listing = one.in(opened);
        Holding holding = holding();
        ValueSource values = valueBetween == null ? opened.valuer()::forecast : own(catalogue.currency());
        Judge judge = new Judge(catalogue, values, one.settings(catalogue, main.seed()));
        Appraisal appraisal = JudgingInput.appraisal(judge.judge(listing), listing.id());
        if (questions) {
            new QuestionsReport(appraisal, new Interview(judge).questions(appraisal, MOST_QUESTIONS))
                    .text(spec.commandLine().getOut());
            return ExitCode.OK;
        }
        print(new CaseReport(appraisal, catalogue,
                new CaseReport.More(new PreventiveReport(judge.whileInThere(appraisal, holding), holding),
                        new PlanReport(appraisal.likelyPlan(), judge.partSources(appraisal),
                                judge.whyNoPlan(appraisal)),
                        priced.beside(listing, opened.ground(), err), judge.lookAhead(appraisal), export.guard())),
                opened.note());
        return ExitCode.OK;
    }

    private ValueSource own(Currency currency) {
        String[] ends = valueBetween.split(":", -1);
        try {
            return ValueSource.between(Double.parseDouble(ends[0]), Double.parseDouble(ends[1]), currency);
        } catch (ArrayIndexOutOfBoundsException | IllegalArgumentException e) {
            throw new UserError(ExitCode.USAGE, "--value-between takes two figures, the lower one above zero and first,"
                    + " such as 4000:6500, not '" + valueBetween + "'");
        }
    }

    private Holding holding() {
        try {
            return new Holding(keepYears, milesPerYear);
        } catch (IllegalArgumentException e) {
            throw new UserError(ExitCode.USAGE, e.getMessage());
        }
    }

    private void print(CaseReport report, String note) throws IOException {
        PrintWriter out = spec.commandLine().getOut();
        if (!export.print(report, out)) {
            out.println(note);
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
