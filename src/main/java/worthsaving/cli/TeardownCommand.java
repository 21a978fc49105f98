package worthsaving.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.Reader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Currency;
import java.util.List;
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
import worthsaving.ranking.Preparation;
import worthsaving.ranking.PreparedListing;
import worthsaving.ranking.Quoter;
import worthsaving.ranking.ShopQuote;
import worthsaving.report.TeardownReport;
import worthsaving.teardown.Advice;
import worthsaving.teardown.GoStop;
import worthsaving.teardown.Journal;
import worthsaving.teardown.JournalReader;
import worthsaving.teardown.TeardownTerms;
import worthsaving.vehicle.Listing;

/** Go on or stop with a bought car. */
@Command(
        name = "teardown",
        description = "For a car that is bought: what was spent (not counted), whether to go on, look further or "
                + "stop, what would stop it, where to look first, when to call the owner. The journal is a table with "
                + "the columns stage, kind, what, value, when; kinds: opened, finding, item, hours, paid, part, "
                + "mended, note.",
        mixinStandardHelpOptions = true)
final class TeardownCommand implements Callable<Integer> {

    @ParentCommand
    private Main main;

    @Mixin
    private OneListing one;

    @Mixin
    private Output output;

    @Option(names = "--journal", paramLabel = "FILE", description = "The journal (default: nothing done yet).")
    private Path file;

    @Option(names = "--rate", paramLabel = "MONEY",
            description = "The workshop's hour, when it is an owner's car (default: the catalogue's shop_hourly).")
    private Double rate;

    @Option(names = "--closing-share", paramLabel = "SHARE",
            description = "Share of an access step's hours that closing it again takes, 0 to 1 (default: 0.5, a guess).")
    private Double closingShare;

    @Spec
    private CommandSpec spec;

    @Override
    public Integer call() throws IOException {
        PrintWriter err = spec.commandLine().getErr();
        JudgingInput.Opened opened = one.open(err);
        Catalogue catalogue = opened.catalogue();
        Listing listing = one.in(opened);
        JudgeSettings settings = one.settings(catalogue, main.seed());
        JournalReader.Reading reading = reading(catalogue, settings);
        reading.faults().forEach(err::println);
        Journal journal = reading.journal();
        Judge judge = new Judge(catalogue, opened.valuer()::forecastWithoutReasons, settings);
        PreparedListing prepared = prepared(judge.prepare(journal.addedTo(listing)), listing.id());
        Advice advice = new GoStop(catalogue, settings, terms()).advise(prepared, journal);
        Money hourly = rate(catalogue.currency());
        Money shop = hourly == null ? settings.terms().money(Term.SHOP_HOURLY) : hourly;
        Appraisal appraisal = prepared.appraise(settings.terms(), settings.rule(), listing.ask().get());
        Optional<ShopQuote> quote =
                new Quoter(catalogue, settings, shop, journal.opened()).write(appraisal, Optional.empty());
        output.print(new TeardownReport(listing.id() + ", " + listing.vehicle().label(), advice, quote,
                journal.hours().at(shop)), spec.commandLine().getOut(), opened.note());
        return reading.faults().isEmpty() ? ExitCode.OK : ExitCode.SOME_ROWS_REFUSED;
    }

    private JournalReader.Reading reading(Catalogue catalogue, JudgeSettings settings) throws IOException {
        if (file == null) {
            return new JournalReader.Reading(Journal.EMPTY, List.of());
        }
        try (Reader in = Files.newBufferedReader(file, StandardCharsets.UTF_8)) {
            return JournalReader.read(file.getFileName().toString(), in, catalogue, settings.terms().currency());
        }
    }

    private static PreparedListing prepared(Preparation preparation, String id) {
        if (preparation instanceof Preparation.Ready ready) {
            return ready.listing();
        }
        Judged.Refused why = ((Preparation.Refused) preparation).why();
        throw new UserError(ExitCode.SOME_ROWS_REFUSED, id + " cannot be judged: " + why.reason() + "; " + why.mend());
    }

    private TeardownTerms terms() {
        try {
            return closingShare == null ? TeardownTerms.USUAL
                    : new TeardownTerms(closingShare, TeardownTerms.USUAL.look());
        } catch (IllegalArgumentException e) {
            throw new UserError(ExitCode.USAGE, e.getMessage());
        }
    }

    private Money rate(Currency currency) {
        if (rate != null && (!(rate > 0) || Double.isInfinite(rate))) {
            throw new UserError(ExitCode.USAGE, "--rate must be above zero, not " + rate);
        }
        return rate == null ? null : new Money(rate, currency);
    }
}
