package worthsaving.repair;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import worthsaving.catalog.FailureItem;
import worthsaving.catalog.PartSource;
import worthsaving.catalog.Remedy;
import worthsaving.quantity.Money;
import worthsaving.quantity.MoneyRange;
import worthsaving.quantity.Range;

/** Chooses where the part of an item's own job comes from. */
final class PartChoice {

    private final Workshop shop;
    private final List<Remedy> units;

    PartChoice(Workshop shop, List<Remedy> remedies) {
        this.shop = shop;
        units = remedies.stream().filter(Remedy::wholeUnit).toList();
    }

    /**
     * Every offer, in the order of {@link PartSource}. A catalogue price from the shelf stands for a job
     * without a part, such as papers: it is what has to be paid all the same.
     *
     * @param labour cost of hours of the job done alone, access included
     */
    List<SourceOffer> offers(FailureItem item, Money labour) {
        Map<PartSource, MoneyRange> prices = new TreeMap<>(item.parts());
        if (shop.shelf().contains(item.id()) || prices.isEmpty()) {
            prices.put(PartSource.ON_THE_SHELF, MoneyRange.exactly(Money.zero(shop.currency())));
        }
        boolean needsPart = prices.size() > 1 || !prices.containsKey(PartSource.ON_THE_SHELF);
        double cheapest = prices.keySet().stream()
                .filter(source -> source != PartSource.ON_THE_SHELF)
                .mapToDouble(source -> prices.get(source).mean().amount())
                .min()
                .orElse(0);
        double again = labour.amount() + item.consumables().mean().amount();
        List<SourceOffer> offers = new ArrayList<>();
        prices.forEach((source, price) -> {
            boolean shelf = source == PartSource.ON_THE_SHELF;
            SourceTerms terms = shop.terms().get(source);
            Range comeback = needsPart ? terms.comeback() : Range.exactly(0);
            double mean = price.mean().amount();
            Money expected = new Money(
                    mean + comeback.mean() * ((shelf ? cheapest : mean) + again), shop.currency());
            offers.add(new SourceOffer(source, price, comeback, terms.days(), expected, allowed(item, source),
                    false));
        });
        return markChosen(offers);
    }

    /** The offer that plans use; empty when no source is allowed. */
    Optional<SourceOffer> best(FailureItem item, Money labour) {
        return offers(item, labour).stream().filter(SourceOffer::chosen).findFirst();
    }

    private boolean allowed(FailureItem item, PartSource source) {
        PartSource settled = shop.choice().get(item.id());
        if (settled != null) {
            return settled == source;
        }
        boolean usedUnit = source == PartSource.USED && isUnit(item);
        return shop.allowedSources().contains(source) && (shop.usedUnits() || !usedUnit);
    }

    /** The part is a whole unit itself when the job takes out what a unit that mends the item takes out. */
    private boolean isUnit(FailureItem item) {
        return units.stream().anyMatch(
                unit -> unit.closes().contains(item.id()) && item.access().containsAll(unit.access()));
    }

    private static List<SourceOffer> markChosen(List<SourceOffer> offers) {
        Optional<SourceOffer> best = offers.stream()
                .filter(SourceOffer::allowed)
                .min(Comparator.comparing(SourceOffer::expectedCost));
        return offers.stream()
                .map(o -> new SourceOffer(o.source(), o.price(), o.comeback(), o.days(), o.expectedCost(),
                        o.allowed(), best.isPresent() && best.get().equals(o)))
                .toList();
    }
}
