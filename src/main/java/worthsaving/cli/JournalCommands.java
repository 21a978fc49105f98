package worthsaving.cli;

import java.io.IOException;
import java.nio.file.Path;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import worthsaving.casebook.Edit;
import worthsaving.casebook.JournalEntry;
import worthsaving.casebook.JournalEntry.What;
import worthsaving.casebook.Photo;
import worthsaving.casebook.PhotoFile;
import worthsaving.catalog.Catalogue;
import worthsaving.quantity.Hours;
import worthsaving.quantity.Money;
import worthsaving.vehicle.Observation;
import worthsaving.vehicle.Observation.Sight;
import worthsaving.vehicle.Observation.Witness;

/** Commands that write one entry into the journal of a case. */
final class JournalCommands {

    private JournalCommands() {}

    /** What all of them take. */
    abstract static class Entry implements Callable<Integer> {
        @Mixin
        CasebookFile casebook;

        @Parameters(index = "0", paramLabel = "ID", description = "Id of the case.")
        String id;

        @Option(names = "--stage", paramLabel = "TEXT", defaultValue = "",
                description = "How far the car was, such as 'driveway' or 'opened up'.")
        String stage;

        @Option(names = "--on", paramLabel = "DATE", converter = Day.class, description = "Its day (default: now).")
        LocalDate day;

        int write(What what, List<String> words) throws IOException {
            return casebook.keep(new Edit.Write(id, new JournalEntry(at(), stage, what, text(words))));
        }

        /** @param words null when none were given */
        static String text(List<String> words) {
            return words == null ? "" : String.join(" ", words);
        }

        /** @throws UserError unless the catalogue has it */
        static void known(boolean known, String kind, String id) {
            if (!known) {
                throw new UserError(ExitCode.USAGE, "The catalogue has no " + kind + " '" + id + "'; see their ids in "
                        + CatalogueFiles.FOLDER);
            }
        }

        Instant at() {
            return day == null ? Instant.now() : JournalEntry.noon(day, ZoneId.systemDefault());
        }
    }

    @Command(name = "note", description = "Writes a note.", mixinStandardHelpOptions = true)
    static final class Note extends Entry {
        @Parameters(index = "1..*", arity = "1..*", paramLabel = "TEXT", description = "The note.")
        private List<String> words;

        @Option(names = "--decision", description = "It is a decision: go on, stop, another way out.")
        private boolean decision;

        @Override
        public Integer call() throws IOException {
            return write(decision ? new What.Decision() : new What.Note(), words);
        }
    }

    @Command(name = "finding", description = "Writes down what was looked at; it is evidence from then on.",
            mixinStandardHelpOptions = true)
    static final class Finding extends Entry {
        @Parameters(index = "1", paramLabel = "FINDING", description = "Id of a finding or failure item of the catalogue.")
        private String subject;

        @Parameters(index = "2..*", arity = "0..*", paramLabel = "TEXT", description = "Words on it.")
        private List<String> words;

        @Option(names = "--is", paramLabel = "present|absent|unsure", defaultValue = "present",
                description = "What was seen (default: ${DEFAULT-VALUE}).")
        private Sight sight;

        @Option(names = "--seller", description = "The seller says so.")
        private boolean seller;

        @Override
        public Integer call() throws IOException {
            Catalogue catalogue = CatalogueFiles.load(Resources.find());
            known(catalogue.findingsById().containsKey(subject) || catalogue.itemsById().containsKey(subject),
                    "finding or failure item", subject);
            return write(new What.Finding(
                    new Observation(subject, sight, seller ? Witness.SELLER : Witness.OWN_EYES)), words);
        }
    }

    @Command(name = "hours", description = "Writes own hours down.", mixinStandardHelpOptions = true)
    static final class HoursWorked extends Entry {
        @Parameters(index = "1", paramLabel = "HOURS", description = "Hours worked.")
        private double hours;

        @Parameters(index = "2..*", arity = "0..*", paramLabel = "TEXT", description = "At what.")
        private List<String> words;

        @Option(names = "--planned", paramLabel = "HOURS",
                description = "Book hours of the same job; your own speed is learnt from both.")
        private Double planned;

        @Override
        public Integer call() throws IOException {
            try {
                return write(new What.Work(Hours.of(hours), Optional.ofNullable(planned).map(Hours::of)), words);
            } catch (IllegalArgumentException e) {
                throw new UserError(ExitCode.USAGE, e.getMessage());
            }
        }
    }

    @Command(name = "receipt", description = "Writes money spent on the car down.", mixinStandardHelpOptions = true)
    static final class ReceiptPaid extends Entry {
        @Parameters(index = "1", paramLabel = "MONEY", description = "Money paid, in US dollars.")
        private double paid;

        @Parameters(index = "2..*", arity = "0..*", paramLabel = "TEXT", description = "For what.")
        private List<String> words;

        @Option(names = "--planned", paramLabel = "MONEY",
                description = "What these parts were expected to cost; your own part prices are learnt from both.")
        private Double planned;

        @Override
        public Integer call() throws IOException {
            return write(new What.Receipt(Money.usd(paid), Optional.ofNullable(planned).map(Money::usd)), words);
        }
    }

    @Command(name = "photo", description = "Notes where a photo lies, and its checksum; the picture stays where it is.",
            mixinStandardHelpOptions = true)
    static final class PhotoTaken extends Entry {
        @Option(names = "--entry", paramLabel = "NUMBER", description = "The entry of the journal that it belongs to.")
        private Long entry;

        @Parameters(index = "1", paramLabel = "FILE", description = "The picture.")
        private Path picture;

        @Parameters(index = "2..*", arity = "0..*", paramLabel = "TEXT", description = "What it shows.")
        private List<String> words;

        @Override
        public Integer call() throws IOException {
            Photo photo = PhotoFile.of(picture, casebook.path(), at(), stage, text(words));
            return casebook.keep(new Edit.AddPhoto(id, entry == null ? photo : photo.of(entry)));
        }
    }
}
