package worthsaving.cli;

import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;
import picocli.CommandLine.Option;
import worthsaving.catalog.Catalogue;
import worthsaving.catalog.PartSource;
import worthsaving.catalog.Tool;
import worthsaving.deal.DealTerms;
import worthsaving.deal.Term;
import worthsaving.quantity.Money;
import worthsaving.ranking.JudgeSettings;
import worthsaving.repair.Worker;
import worthsaving.repair.Workshop;

/** Who works, with which tools, and where parts come from. */
final class WorkshopOptions {

    private enum Who { OWN, INDEPENDENT, DEALER }

    @Option(names = "--worker", paramLabel = "WHO",
            description = "Who works: own, independent or dealer (default: own). A dealer's quote for the whole repair "
                    + "is compared by 'rescue'.")
    private Who who = Who.OWN;

    @Option(names = "--hourly", paramLabel = "MONEY",
            description = "What an own hour is worth, or what the shop charges for one (default: the catalogue's).")
    private Double hourly;

    @Option(names = "--speed", paramLabel = "FACTOR",
            description = "Own hours for one book hour (default: 1; 1.5 is half as long again).")
    private Double speed;

    @Option(names = "--first-time", paramLabel = "FACTOR",
            description = "Further factor on jobs and access steps not done before (default: 1).")
    private Double firstTime;

    @Option(names = "--done", paramLabel = "ID", split = ",",
            description = "Jobs and access steps done before, by their ids.")
    private Set<String> done = new HashSet<>();

    @Option(names = "--own-tools", paramLabel = "ID", split = ",",
            description = "Special tools at hand beside those the catalogue marks, by their ids.")
    private Set<String> ownTools = new HashSet<>();

    @Option(names = "--parts-from", paramLabel = "SOURCE", split = ",",
            description = "Only these sources: maker, aftermarket, rebuilt, used. Parts on the shelf always count.")
    private List<String> partsFrom;

    @Option(names = "--part", paramLabel = "ITEM=SOURCE", split = ",",
            description = "Where the part of one item comes from, such as WATER_PUMP=maker.")
    private Map<String, String> parts = new TreeMap<>();

    @Option(names = "--on-shelf", paramLabel = "ITEM", split = ",",
            description = "Items whose part lies on the shelf: it costs nothing and is shown.")
    private Set<String> shelf = new HashSet<>();

    @Option(names = "--no-used-units", description = "Fit no used engine, gearbox or battery pack.")
    private boolean noUsedUnits;

    /** @throws IllegalArgumentException when an id is unknown or a figure out of range */
    JudgeSettings applyTo(JudgeSettings settings, Catalogue catalogue) {
        JudgeSettings changed = settings;
        if (hourly != null && who == Who.OWN) {
            changed = changed.withHourly(new Money(hourly, changed.terms().currency()))
                    .withTerms(changed.terms().with(Term.OWN_HOURLY, hourly));
        }
        Set<String> tools = new HashSet<>(changed.workshop().ownedTools());
        tools.addAll(known("--own-tools", ownTools,
                catalogue.tools().stream().map(Tool::id).collect(Collectors.toSet())));
        changed = changed.withTools(tools);
        Workshop shop = changed.workshop().withWorker(worker(changed.terms(), catalogue));
        if (partsFrom != null) {
            shop = shop.withOnly(partsFrom.stream().map(WorkshopOptions::source).collect(Collectors.toSet()));
        }
        known("--part", parts.keySet(), catalogue.itemsById().keySet());
        for (Map.Entry<String, String> part : parts.entrySet()) {
            shop = shop.withChoice(part.getKey(), source(part.getValue()));
        }
        shop = shop.withShelf(known("--on-shelf", shelf, catalogue.itemsById().keySet()));
        return changed.withWorkshop(noUsedUnits ? shop.withUsedUnits(false) : shop);
    }

    private Worker worker(DealTerms terms, Catalogue catalogue) {
        if (who == Who.OWN) {
            Set<String> jobs = new HashSet<>(catalogue.itemsById().keySet());
            catalogue.remedies().forEach(r -> jobs.add(r.id()));
            catalogue.accessSteps().forEach(s -> jobs.add(s.id()));
            return new Worker.OwnHands(terms.money(Term.OWN_HOURLY), speed == null ? 1 : speed,
                    firstTime == null ? 1 : firstTime, known("--done", done, jobs));
        }
        if (speed != null || firstTime != null || !done.isEmpty()) {
            throw new IllegalArgumentException("--speed, --first-time and --done are for own hands; a shop charges book"
                    + " hours");
        }
        boolean dealer = who == Who.DEALER;
        Money rate = hourly != null ? new Money(hourly, terms.currency())
                : terms.money(dealer ? Term.DEALER_HOURLY : Term.SHOP_HOURLY);
        return new Worker.Shop(dealer ? Worker.Shop.Kind.DEALER : Worker.Shop.Kind.INDEPENDENT, rate);
    }

    private static Set<String> known(String option, Set<String> given, Set<String> ids) {
        for (String id : given) {
            if (!ids.contains(id)) {
                throw new IllegalArgumentException(option + ": the catalogue has no '" + id + "'; ids are written as in "
                        + CatalogueFiles.FOLDER);
            }
        }
        return given;
    }

    private static PartSource source(String name) {
        String wanted = name.trim().replace('-', '_').replace(' ', '_');
        return Arrays.stream(PartSource.values()).filter(s -> s.name().equalsIgnoreCase(wanted)).findFirst()
                .orElseThrow(() -> new IllegalArgumentException("'" + name + "' is no source of parts; take one of "
                        + Arrays.toString(PartSource.values()).toLowerCase(Locale.ROOT)));
    }
}
