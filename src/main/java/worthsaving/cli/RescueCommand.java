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
import worthsaving.ranking.RescueTerms;
import worthsaving.ranking.Rescuer;
import worthsaving.ranking.ValueSource;
import worthsaving.report.RescueReport;
import worthsaving.vehicle.Listing;

/** An owner's choice between mending a car and replacing it. */
@Command(
        name = "rescue",
        description = "For the owner of a car: paying the quote, a shop, own hands, or selling it as it stands and "
                + "buying another, over the years and miles wanted. The quote is taken from the column 'quote'.",
        mixinStandardHelpOptions = true)
final class RescueCommand implements Callable<Integer> {

    @ParentCommand
    private Main main;

    @Mixin
    private OneListing one;

    @Mixin
    private ExportForm export;

    @Mixin
    private RescueOptions wishes;

    @Spec
    private CommandSpec spec;

    @Override
    public Integer call() throws IOException {
        JudgingInput.Opened opened = one.open(spec.commandLine().getErr());
        Catalogue catalogue = opened.catalogue();
        ValueSource values = opened.valuer()::forecastWithoutReasons;
        Listing listing = one.in(opened);
        JudgeSettings settings = one.settings(catalogue, main.seed());
        RescueTerms terms = wishes.terms(opened.lot(), listing, catalogue.currency());
        Appraisal appraisal = JudgingInput.appraisal(
                new Judge(catalogue, values, settings).judge(listing), listing.id());
        RescueReport report =
                new RescueReport(new Rescuer(catalogue, values, settings).compare(appraisal, terms), export.guard());
        export.print(report, report::text, spec.commandLine().getOut(), opened.note());
        return ExitCode.OK;
    }
}
