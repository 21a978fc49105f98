package worthsaving.cli;

import java.io.IOException;
import java.io.PrintWriter;
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
import worthsaving.ranking.Judged;
import worthsaving.ranking.Quoter;
import worthsaving.ranking.ShopQuote;
import worthsaving.report.QuoteReport;
import worthsaving.valuation.Valuer;
import worthsaving.vehicle.Listing;

/** A workshop's quote. */
@Command(
        name = "quote",
        description = "For the mechanic: labour by stage, the price not exceeded with 80 and 95 %%, the ceiling to "
                + "agree, when to call the owner, and the usual cautions.",
        mixinStandardHelpOptions = true)
final class QuoteCommand implements Callable<Integer> {

    private static final int MOST = 1_000_000;

    @ParentCommand
    private Main main;

    @Mixin
    private ListingSource source;

    @Mixin
    private JudgeOptions options;

    @Mixin
    private Output output;

    @Option(names = "--id", paramLabel = "ID", description = "Which car (default: the first).")
    private String id;

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
        source.mustBeThere();
        Resources resources = Resources.find();
        Catalogue catalogue = CatalogueFiles.load(resources);
        Valuer valuer = options.valuer(resources);
        ReadLot lot = source.lot(catalogue, valuer, MOST, spec.commandLine().getErr());
        Listing listing = lot.one(id, source.file());
        JudgeSettings settings = options.settings(catalogue, main.seed());
        Money hourly = rate == null ? settings.terms().money(Term.SHOP_HOURLY) : positive("--rate", rate);
        Optional<Money> most = Optional.ofNullable(ceiling).map(c -> positive("--ceiling", c));
        Judged judged = new Judge(catalogue, valuer::forecastWithoutReasons, settings).judge(listing);
        if (judged instanceof Judged.Refused no) {
            throw new UserError(ExitCode.SOME_ROWS_REFUSED,
                    listing.id() + " cannot be judged: " + no.reason() + "; " + no.mend());
        }
        Appraisal appraisal = ((Judged.Done) judged).appraisal();
        ShopQuote quote = new Quoter(catalogue, settings, hourly).write(appraisal, most)
                .orElseThrow(() -> new UserError(ExitCode.SOME_ROWS_REFUSED, listing.id() + " cannot be quoted: nothing"
                        + " is suspected, or nothing allowed mends it; enter what was found"));
        print(new QuoteReport(appraisal, quote), spec.commandLine().getOut());
        return ExitCode.OK;
    }

    private void print(QuoteReport report, PrintWriter out) throws IOException {
        if (output.json()) {
            report.json(out);
        } else if (output.csv()) {
            report.csv(out);
        } else {
            report.text(out);
            out.println("\nEstimates; not appraisal, legal or safety advice.");
        }
    }

    private static Money positive(String option, double amount) {
        if (!(amount > 0) || Double.isInfinite(amount)) {
            throw new UserError(ExitCode.USAGE, option + " must be above zero, not " + amount);
        }
        return Money.usd(amount);
    }
}
