package worthsaving.cli;

import java.io.IOException;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.TreeMap;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import worthsaving.casebook.Actual;
import worthsaving.casebook.CaseFile;
import worthsaving.casebook.Casebook;
import worthsaving.casebook.Edit;
import worthsaving.catalog.Catalogue;
import worthsaving.quantity.Hours;
import worthsaving.quantity.Money;

/** Writes down what came of a car. */
@Command(name = "finish", description = "Writes down what came of a car, for the record. Cost and hours are added up from "
        + "the journal unless given. Money in US dollars.", mixinStandardHelpOptions = true)
final class FinishCommand implements Callable<Integer> {

    @Mixin
    private CasebookFile casebook;

    @Parameters(paramLabel = "ID", description = "Id of the case.")
    private String id;

    @Option(names = "--paid", required = true, paramLabel = "MONEY", description = "Price paid for it.")
    private double paid;

    @Option(names = "--sold", required = true, paramLabel = "MONEY", description = "What it fetched.")
    private double sold;

    @Option(names = "--bought-on", required = true, paramLabel = "DATE", description = "Day of purchase.")
    private LocalDate boughtOn;

    @Option(names = "--sold-on", paramLabel = "DATE", description = "Day of the money (default: today).")
    private LocalDate soldOn = LocalDate.now();

    @Option(names = "--cost", paramLabel = "MONEY",
            description = "All cash laid out, the price included (default: price and receipts).")
    private Double cost;

    @Option(names = "--hours", paramLabel = "HOURS", description = "Own hours (default: those of the journal).")
    private Double hours;

    @Option(names = "--days-to-sell", paramLabel = "DAYS", description = "From ready to sold.")
    private Double daysToSell;

    @Option(names = "--failed", split = ",", paramLabel = "ITEM", description = "Items that had failed.")
    private List<String> failed = List.of();

    @Option(names = "--sound", split = ",", paramLabel = "ITEM", description = "Items that were looked at and sound.")
    private List<String> sound = List.of();

    @Override
    public Integer call() throws IOException {
        Map<String, Boolean> items = items(CatalogueFiles.load(Resources.find()));
        try (Casebook book = casebook.forWriting()) {
            CaseFile of = CasebookFile.caseOf(book, id);
            Money price = Money.usd(paid);
            Actual actual = new Actual(boughtOn, soldOn, price, Money.usd(sold),
                    cost != null ? Money.usd(cost) : of.receipts().map(price::plus).orElse(price),
                    hours != null ? Hours.of(hours) : of.hours(),
                    daysToSell != null ? OptionalDouble.of(daysToSell) : OptionalDouble.empty(), items);
            return casebook.told(book.save(new Edit.Finish(id, Optional.of(actual))));
        } catch (IllegalArgumentException e) {
            throw new UserError(ExitCode.USAGE, e.getMessage());
        }
    }

    private Map<String, Boolean> items(Catalogue catalogue) {
        Map<String, Boolean> items = new TreeMap<>();
        failed.forEach(item -> items.put(item, true));
        for (String item : sound) {
            if (items.put(item, false) != null) {
                throw new UserError(ExitCode.USAGE, item + " is told as failed and as sound; keep one of the two");
            }
        }
        for (String item : items.keySet()) {
            if (!catalogue.itemsById().containsKey(item)) {
                throw new UserError(ExitCode.USAGE, "The catalogue has no failure item '" + item + "'; see their ids in "
                        + CatalogueFiles.FOLDER);
            }
        }
        return items;
    }
}
