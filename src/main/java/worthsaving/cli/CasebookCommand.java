package worthsaving.cli;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.Callable;
import java.util.stream.Collectors;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.ParentCommand;
import worthsaving.casebook.CaseFile;
import worthsaving.casebook.Casebook;
import worthsaving.casebook.Edit;
import worthsaving.catalog.Catalogue;
import worthsaving.quantity.Seed;
import worthsaving.report.CaseFileReport;
import worthsaving.report.CasesReport;
import worthsaving.vehicle.Listing;

/** The user's own file of cases. */
@Command(
        name = "casebook",
        description = "Keeps cases, their journal, forecasts and what came of them in one file. Every command is kept at "
                + "once and can be undone.",
        mixinStandardHelpOptions = true,
        subcommands = {CasebookCommand.ListCases.class, CasebookCommand.Add.class, CasebookCommand.Show.class,
            JournalCommands.Note.class, JournalCommands.Finding.class, JournalCommands.HoursWorked.class,
            JournalCommands.ReceiptPaid.class, JournalCommands.PhotoTaken.class, TeardownEntries.Opened.class,
            TeardownEntries.Part.class, TeardownEntries.Mended.class, ImportCommand.class, ForecastCommand.class,
            FinishCommand.class, CasebookCommand.Drop.class, CasebookCommand.Undo.class, CasebookCommand.Redo.class,
            CasebookCommand.BackUp.class, CasebookCommand.Restore.class, RecordCommand.class, LearningCommand.class})
final class CasebookCommand {

    private static final int MOST = 100_000;

    @ParentCommand
    private Main main;

    Seed seed() {
        return main.seed();
    }

    @Command(name = "list", description = "Lists the cases.", mixinStandardHelpOptions = true)
    static final class ListCases implements Callable<Integer> {
        @Mixin
        private CasebookFile casebook;

        @Mixin
        private Output output;

        @Mixin
        private VinOption vin;

        @Override
        public Integer call() throws IOException {
            try (Casebook book = casebook.forReading()) {
                output.printKept(new CasesReport(book.cases(), vin.guard()), casebook.out());
            }
            return ExitCode.OK;
        }
    }

    @Command(name = "add", description = "Adds the listings of a table as cases, as one edit; ids already there are left "
            + "as they are.", mixinStandardHelpOptions = true)
    static final class Add implements Callable<Integer> {
        @Mixin
        private CasebookFile casebook;

        @Mixin
        private ListingSource source;

        @Override
        public Integer call() throws IOException {
            source.mustBeThere();
            Resources resources = Resources.find();
            Catalogue catalogue = CatalogueFiles.load(resources);
            ReadLot lot = source.lot(
                    resources, catalogue, PriceModels.load(resources, "us"), MOST, casebook.err());
            try (Casebook book = casebook.forWriting()) {
                Set<String> there = book.cases().stream().map(CaseFile::id).collect(Collectors.toSet());
                List<Edit> adding = new ArrayList<>();
                for (Listing listing : lot.listings()) {
                    if (there.contains(listing.id())) {
                        casebook.err().println(listing.id() + " is in the casebook already and was left as it is");
                    } else {
                        adding.add(new Edit.AddCase(listing));
                    }
                }
                if (!adding.isEmpty()) {
                    casebook.told(book.save(new Edit.Several(String.format(Locale.ROOT, "add %d %s from %s", adding.size(),
                            adding.size() == 1 ? "case" : "cases", source.file().getFileName()), adding)));
                }
                return lot.complete() && adding.size() == lot.listings().size()
                        ? ExitCode.OK : ExitCode.SOME_ROWS_REFUSED;
            }
        }
    }

    @Command(name = "show", description = "Shows a case and its journal; --csv prints the journal "
            + "as a table that casebook import reads.", mixinStandardHelpOptions = true)
    static final class Show implements Callable<Integer> {
        @Mixin
        private CasebookFile casebook;

        @Mixin
        private Output output;

        @Mixin
        private VinOption vin;

        @Parameters(paramLabel = "ID", description = "Id of the case.")
        private String id;

        @Override
        public Integer call() throws IOException {
            Set<String> items = CatalogueFiles.load(Resources.find()).itemsById().keySet();
            try (Casebook book = casebook.forReading()) {
                output.printKept(new CaseFileReport(CasebookFile.caseOf(book, id), items, vin.guard()), casebook.out());
            }
            return ExitCode.OK;
        }
    }

    @Command(name = "drop", description = "Takes a case out with all that was written about it.",
            mixinStandardHelpOptions = true)
    static final class Drop implements Callable<Integer> {
        @Mixin
        private CasebookFile casebook;

        @Parameters(paramLabel = "ID", description = "Id of the case.")
        private String id;

        @Override
        public Integer call() throws IOException {
            return casebook.keep(new Edit.DropCase(id));
        }
    }

    @Command(name = "undo", description = "Takes back the last edit, of whatever day.", mixinStandardHelpOptions = true)
    static final class Undo implements Callable<Integer> {
        @Mixin
        private CasebookFile casebook;

        @Override
        public Integer call() throws IOException {
            try (Casebook book = casebook.forWriting()) {
                return casebook.told(book.undo());
            }
        }
    }

    @Command(name = "redo", description = "Does the edit again that was taken back last.", mixinStandardHelpOptions = true)
    static final class Redo implements Callable<Integer> {
        @Mixin
        private CasebookFile casebook;

        @Override
        public Integer call() throws IOException {
            try (Casebook book = casebook.forWriting()) {
                return casebook.told(book.redo());
            }
        }
    }

    @Command(name = "backup", description = "Makes a backup now and lists all; one a day is made by itself.",
            mixinStandardHelpOptions = true)
    static final class BackUp implements Callable<Integer> {
        @Mixin
        private CasebookFile casebook;

        @Override
        public Integer call() throws IOException {
            try (Casebook book = casebook.forWriting()) {
                book.backup();
            }
            Casebook.backups(casebook.path()).forEach(casebook.out()::println);
            return ExitCode.OK;
        }
    }

    @Command(name = "restore", description = "Puts a backup in the casebook's place; what was there is set aside.",
            mixinStandardHelpOptions = true)
    static final class Restore implements Callable<Integer> {
        @Mixin
        private CasebookFile casebook;

        @Parameters(paramLabel = "BACKUP", description = "The backup's file.")
        private Path backup;

        @Override
        public Integer call() throws IOException {
            Optional<Path> aside = Casebook.restore(backup, casebook.path());
            casebook.out().println("Restored " + casebook.path() + aside.map(a -> "; what was there is now " + a).orElse(""));
            return ExitCode.OK;
        }
    }
}
