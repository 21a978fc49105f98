package worthsaving.cli;

import java.io.IOException;
import java.util.List;
import java.util.Optional;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import worthsaving.casebook.JournalEntry.What;
import worthsaving.quantity.Money;

/** Commands that write down how far a car is taken apart and put together. */
final class TeardownEntries {

    private TeardownEntries() {}

    @Command(name = "opened", description = "Writes down that an access step is open now, with all it requires.",
            mixinStandardHelpOptions = true)
    static final class Opened extends JournalCommands.Entry {
        @Parameters(index = "1", paramLabel = "STEP", description = "Id of an access step of the catalogue.")
        private String step;

        @Parameters(index = "2..*", arity = "0..*", paramLabel = "TEXT", description = "Words on it.")
        private List<String> words;

        @Override
        public Integer call() throws IOException {
            known(CatalogueFiles.load(Resources.find()).accessById().containsKey(step), "access step", step);
            return write(new What.Opened(step), words);
        }
    }

    @Command(name = "part", description = "Writes down that the part of an item lies on the shelf, and what it cost.",
            mixinStandardHelpOptions = true)
    static final class Part extends JournalCommands.Entry {
        @Parameters(index = "1", paramLabel = "ITEM", description = "Id of a failure item of the catalogue.")
        private String item;

        @Parameters(index = "2", paramLabel = "MONEY", description = "Money paid, in US dollars.")
        private double paid;

        @Parameters(index = "3..*", arity = "0..*", paramLabel = "TEXT", description = "Words on it.")
        private List<String> words;

        @Option(names = "--planned", paramLabel = "MONEY",
                description = "What it was expected to cost; your own part prices are learnt from both.")
        private Double planned;

        @Override
        public Integer call() throws IOException {
            known(CatalogueFiles.load(Resources.find()).itemsById().containsKey(item), "failure item", item);
            return write(new What.PartBought(item, Money.usd(paid), Optional.ofNullable(planned).map(Money::usd)), words);
        }
    }

    @Command(name = "mended", description = "Writes down that a failure item is mended.", mixinStandardHelpOptions = true)
    static final class Mended extends JournalCommands.Entry {
        @Parameters(index = "1", paramLabel = "ITEM", description = "Id of a failure item of the catalogue.")
        private String item;

        @Parameters(index = "2..*", arity = "0..*", paramLabel = "TEXT", description = "Words on it.")
        private List<String> words;

        @Override
        public Integer call() throws IOException {
            known(CatalogueFiles.load(Resources.find()).itemsById().containsKey(item), "failure item", item);
            return write(new What.Mended(item), words);
        }
    }
}
