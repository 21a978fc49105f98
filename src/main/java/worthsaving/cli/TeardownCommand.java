package worthsaving.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParentCommand;
import picocli.CommandLine.Spec;
import worthsaving.casebook.CaseFile;
import worthsaving.casebook.Casebook;
import worthsaving.catalog.Catalogue;
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
import worthsaving.teardown.OwnerJob;
import worthsaving.teardown.TeardownTerms;
import worthsaving.vehicle.Listing;

/** Go on or stop with a bought car. */
@Command(
        name = "teardown",
        description = "For a car that is bought: what was spent (not counted), whether to go on, look further or "
                + "stop, what would stop it, where to look first, when to call the owner. FILE is a table of listings; "
                + "its --journal is a table with the columns stage, kind, what, value, when; kinds: opened, finding, "
                + "item, hours, paid, part, mended, decision, note. With --casebook, FILE is the id of a case, and its "
                + "journal counts.",
        mixinStandardHelpOptions = true)
final class TeardownCommand implements Callable<Integer> {

    @ParentCommand
    private Main main;

    @Mixin
    private OneListing one;

    @Mixin
    private Output output;

    @Mixin
    private VinOption vin;

    @Mixin
    private QuoteOptions wishes;

    @Option(names = "--journal", paramLabel = "FILE", description = "The journal (default: nothing done yet).")
    private Path file;

    @Option(names = "--casebook", paramLabel = "FILE", description = "The casebook that the case and its journal are in.")
    private Path casebook;

    @Option(names = "--closing-share", paramLabel = "SHARE",
            description = "Share of an access step's hours that closing it again takes, 0 to 1 (default: 0.5, a guess).")
    private Double closingShare;

    @Spec
    private CommandSpec spec;

    /**
     * A car and what was done to it.
     *
     * @param told what was wrong with the journal's table, by row
     */
    private record Work(Listing listing, Journal journal, List<String> told) {}

    @Override
    public Integer call() throws IOException {
        PrintWriter err = spec.commandLine().getErr();
        JudgingInput.Opened opened = casebook == null ? one.open(err) : one.openWithoutTable();
        Catalogue catalogue = opened.catalogue();
        JudgeSettings settings = one.settings(catalogue, main.seed());
        Work work = casebook == null ? ofTable(opened, settings) : ofCasebook(opened, settings);
        work.told().forEach(err::println);
        Judge judge = opened.judge(settings);
        PreparedListing prepared = prepared(judge.prepare(work.journal().addedTo(work.listing())), work.listing().id());
        Advice advice = new GoStop(catalogue, settings, terms()).advise(prepared, work.journal());
        Money hourly = wishes.hourly(settings);
        OwnerJob job = OwnerJob.of(work.journal(), hourly, wishes.agreed(settings.terms().currency()));
        Appraisal appraisal = prepared.appraise(settings.terms(), settings.rule(), work.listing().ask().get());
        Optional<ShopQuote> quote =
                new Quoter(catalogue, settings, hourly, work.journal().opened()).write(appraisal, job.left());
        output.print(new TeardownReport(vin.guard().text(work.listing().id()) + ", " + work.listing().vehicle().label(),
                advice, quote, job), spec.commandLine().getOut(), opened.note());
        return work.told().isEmpty() ? ExitCode.OK : ExitCode.SOME_ROWS_REFUSED;
    }

    private Work ofTable(JudgingInput.Opened opened, JudgeSettings settings) throws IOException {
        Listing listing = one.in(opened);
        JournalReader.Reading reading = file == null ? new JournalReader.Reading(Journal.EMPTY, List.of())
                : JournalFile.read(file, opened.catalogue(), settings.terms().currency());
        return new Work(listing, reading.journal(), reading.faults());
    }

    /** @throws UserError when there is no such case, or its money is not that of the market */
    private Work ofCasebook(JudgingInput.Opened opened, JudgeSettings settings) throws IOException {
        if (file != null) {
            throw new UserError(ExitCode.USAGE, "A case has its journal in the casebook: leave out --journal, or take the "
                    + "table into it with: worthsaving casebook import");
        }
        String id = one.file().toString();
        CaseFile found;
        try (Casebook book = CasebookFile.forReading(casebook, spec.commandLine().getErr())) {
            found = CasebookFile.caseOf(book, id);
        }
        Journal journal = found.teardown();
        try {
            journal.paid(Money.zero(settings.terms().currency()));
        } catch (IllegalArgumentException e) {
            throw new UserError(ExitCode.USAGE, "The journal of " + id + " is in another currency than the price model's "
                    + "market (" + settings.terms().currency() + "); choose the model with --model");
        }
        return new Work(one.scanned(found.listing(), opened), journal, List.of());
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
}
