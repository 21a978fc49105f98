package worthsaving.repair;

import java.util.Currency;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.TreeMap;
import worthsaving.catalog.PartSource;
import worthsaving.quantity.Money;
import worthsaving.quantity.Probability;

/**
 * Who mends the car, with what, and on which terms. Immutable; the {@code with} methods give changed
 * copies.
 *
 * @param worker who works and what an hour costs; its currency is the workshop's
 * @param ownedTools ids of special tools at hand
 * @param allowedSources part sources to choose from; the shelf is always one of them
 * @param choice source the user has settled on, by item id; goes before {@code allowedSources}
 * @param shelf ids of items whose part lies on the shelf
 * @param usedUnits whether used engines, gearboxes and packs may be fitted
 * @param leastSuccess remedies less likely than this to work are left out
 * @param terms comeback and days of each source
 */
public record Workshop(
        Worker worker,
        Set<String> ownedTools,
        Set<PartSource> allowedSources,
        Map<String, PartSource> choice,
        Set<String> shelf,
        boolean usedUnits,
        Probability leastSuccess,
        Map<PartSource, SourceTerms> terms) {

    /** A remedy likelier to fail than to work is a gamble that the user has to ask for. */
    public static final Probability EVEN_CHANCE = Probability.of(0.5);

    public Workshop {
        Objects.requireNonNull(worker, "worker");
        Objects.requireNonNull(leastSuccess, "leastSuccess");
        ownedTools = Set.copyOf(ownedTools);
        Set<PartSource> sources = EnumSet.of(PartSource.ON_THE_SHELF);
        sources.addAll(allowedSources);
        allowedSources = Set.copyOf(sources);
        choice = Map.copyOf(choice);
        shelf = Set.copyOf(shelf);
        terms = Map.copyOf(terms);
        for (PartSource source : PartSource.values()) {
            if (!terms.containsKey(source)) {
                throw new IllegalArgumentException("no terms for parts from " + source);
            }
        }
    }

    /** A workshop that may buy anywhere, owns no special tool and has an empty shelf. */
    public static Workshop of(Worker worker) {
        return new Workshop(worker, Set.of(), EnumSet.allOf(PartSource.class), Map.of(), Set.of(), true,
                EVEN_CHANCE, SourceTerms.guessed());
    }

    /** Own hands at book speed. */
    public static Workshop ownHands(Money hourly) {
        return of(Worker.OwnHands.at(hourly));
    }

    /** An independent shop. */
    public static Workshop independent(Money rate) {
        return of(new Worker.Shop(Worker.Shop.Kind.INDEPENDENT, rate));
    }

    public Currency currency() {
        return worker.hourly().currency();
    }

    public boolean owns(String tool) {
        return worker.bringsTools() || ownedTools.contains(tool);
    }

    public Workshop withWorker(Worker other) {
        return new Workshop(other, ownedTools, allowedSources, choice, shelf, usedUnits, leastSuccess, terms);
    }

    public Workshop withTools(Set<String> tools) {
        return new Workshop(worker, tools, allowedSources, choice, shelf, usedUnits, leastSuccess, terms);
    }

    /** Parts from these sources and from the shelf only. */
    public Workshop withOnly(Set<PartSource> sources) {
        return new Workshop(worker, ownedTools, sources, choice, shelf, usedUnits, leastSuccess, terms);
    }

    public Workshop withChoice(String item, PartSource source) {
        Map<String, PartSource> more = new TreeMap<>(choice);
        more.put(item, source);
        return new Workshop(worker, ownedTools, allowedSources, more, shelf, usedUnits, leastSuccess, terms);
    }

    public Workshop withShelf(Set<String> items) {
        return new Workshop(worker, ownedTools, allowedSources, choice, items, usedUnits, leastSuccess, terms);
    }

    public Workshop withUsedUnits(boolean allowed) {
        return new Workshop(worker, ownedTools, allowedSources, choice, shelf, allowed, leastSuccess, terms);
    }

    public Workshop withLeastSuccess(Probability least) {
        return new Workshop(worker, ownedTools, allowedSources, choice, shelf, usedUnits, least, terms);
    }

    public Workshop withTerms(PartSource source, SourceTerms changed) {
        Map<PartSource, SourceTerms> more = new EnumMap<>(terms);
        more.put(source, changed);
        return new Workshop(worker, ownedTools, allowedSources, choice, shelf, usedUnits, leastSuccess, more);
    }
}
