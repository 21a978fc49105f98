package worthsaving.cli;

import java.io.IOException;
import java.util.Currency;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParentCommand;
import picocli.CommandLine.Spec;
import worthsaving.catalog.Catalogue;
import worthsaving.deal.Term;
import worthsaving.quantity.Money;
import worthsaving.ranking.Appraisal;
import worthsaving.ranking.Judge;
import worthsaving.ranking.JudgeSettings;
import worthsaving.ranking.Quoter;
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
    private Output output;

    @Option(names = "--rate", paramLabel = "MONEY",
            description = "The workshop's hour (default: the catalogue's shop_hourly).")
    private Double rate;

    @Option(names = "--ceiling", paramLabel = "MONEY",
            description = "Most the owner agreed to (default: the price not exceeded with 95 %%).")
    private Double ceiling;

    @Spec
    private CommandSpec spec;

    @Override
    public Integer call() throws IOException {
        JudgingInput.Opened opened = one.open(spec.commandLine().getErr());
        Catalogue catalogue = opened.catalogue();
        Listing listing = one.in(opened);
        JudgeSettings settings = one.settings(catalogue, main.seed());
        Currency currency = catalogue.currency();
        Money hourly = rate == null ? settings.terms().money(Term.SHOP_HOURLY) : positive("--rate", rate, currency);
        Optional<Money> most = Optional.ofNullable(ceiling).map(c -> positive("--ceiling", c, currency));
        Judge judge = new Judge(catalogue, opened.valuer()::forecastWithoutReasons, settings);
        Appraisal appraisal = JudgingInput.appraisal(judge.judge(listing), listing.id());
        ShopQuote quote = new Quoter(catalogue, settings, hourly).write(appraisal, most)
                .orElseThrow(() -> new UserError(ExitCode.SOME_ROWS_REFUSED, listing.id() + " cannot be quoted: nothing"
                        + " is suspected, or nothing allowed mends it; enter what was found"));
        output.print(new QuoteReport(appraisal, quote), spec.commandLine().getOut(), opened.note());
        return ExitCode.OK;
    }

    private static Money positive(String option, double amount, Currency currency) {
        if (!(amount > 0) || Double.isInfinite(amount)) {
            throw new UserError(ExitCode.USAGE, option + " must be above zero, not " + amount);
        }
        return new Money(amount, currency);
    }
}
