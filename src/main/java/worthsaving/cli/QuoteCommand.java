package worthsaving.cli;

import java.io.IOException;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParentCommand;
import picocli.CommandLine.Spec;
import worthsaving.catalog.Catalogue;
import worthsaving.ranking.Appraisal;
import worthsaving.ranking.Judge;
import worthsaving.ranking.JudgeSettings;
import worthsaving.ranking.ShopQuote;
import worthsaving.report.QuoteReport;
import worthsaving.vehicle.Listing;

/** A workshop's quote. */
@Command(
        name = "quote",
        description = "For the mechanic: labour by stage, the price not exceeded with 80 and 95 %%, the ceiling to "
                + "agree, when to call the owner, and the usual cautions.",
        mixinStandardHelpOptions = true)
final class QuoteCommand implements Callable<Integer> {

    @ParentCommand
    private Main main;

    @Mixin
    private OneListing one;

    @Mixin
    private ExportForm export;

    @Mixin
    private QuoteOptions wishes;

    @Spec
    private CommandSpec spec;

    @Override
    public Integer call() throws IOException {
        JudgingInput.Opened opened = one.open(spec.commandLine().getErr());
        Catalogue catalogue = opened.catalogue();
        Listing listing = one.in(opened);
        JudgeSettings settings = one.settings(catalogue, main.seed());
        Judge judge = opened.judge(settings);
        Appraisal appraisal = JudgingInput.appraisal(judge.judge(listing), listing.id());
        ShopQuote quote = wishes.write(appraisal, catalogue, settings);
        QuoteReport report = new QuoteReport(appraisal, quote, export.guard());
        export.print(report, report::text, spec.commandLine().getOut(), opened.note());
        return ExitCode.OK;
    }
}
