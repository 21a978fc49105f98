package worthsaving.cli;

import java.io.IOException;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Spec;
import worthsaving.catalog.Catalogue;
import worthsaving.deal.DealTerms;
import worthsaving.report.MoneyReport;

/** The money lines that a deal is counted with. */
@Command(
        name = "money",
        description = "Lists the money lines of a deal with their ranges and sources, those of a place or of your own "
                + "marked. Examples, not advice: check your local rules.",
        mixinStandardHelpOptions = true)
final class MoneyCommand implements Callable<Integer> {

    @Mixin
    private MoneyOptions money;

    @Mixin
    private Output output;

    @Spec
    private CommandSpec spec;

    @Override
    public Integer call() throws IOException {
        Catalogue catalogue = CatalogueFiles.load(Resources.find());
        DealTerms usual = DealTerms.from(catalogue.moneyLines(), catalogue.currency());
        DealTerms terms;
        try {
            terms = money.applyTo(usual);
        } catch (IllegalArgumentException e) {
            throw new UserError(ExitCode.USAGE, e.getMessage());
        }
        output.print(new MoneyReport(terms, catalogue), spec.commandLine().getOut(),
                "Money in " + catalogue.currency() + "; the figures stand in shared/catalogue/money.csv.");
        return ExitCode.OK;
    }
}
