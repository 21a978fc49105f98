package worthsaving.teardown;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import worthsaving.catalog.Catalogue;
import worthsaving.catalog.FailureItem;
import worthsaving.catalog.PartSource;
import worthsaving.catalog.Remedy;
import worthsaving.deal.Repairs;
import worthsaving.quantity.HoursRange;
import worthsaving.quantity.Money;
import worthsaving.quantity.MoneyRange;
import worthsaving.repair.PatternPlanner;
import worthsaving.repair.RepairPlan;
import worthsaving.repair.RepairPlanner;
import worthsaving.repair.RepairWork;
import worthsaving.repair.Workshop;

/**
 * The cheapest plans that fit one whole unit, whatever has failed. An item is added that nothing but the unit
 * closes, so that the planner weighs shared access and tools as ever.
 */
final class UnitSwap implements Repairs {

    private final String marker;
    private final RepairPlanner planner;

    UnitSwap(Catalogue catalogue, Workshop workshop, Set<String> open, Remedy unit) {
        marker = "FIT_" + unit.id();
        List<FailureItem> items = new ArrayList<>(catalogue.items());
        items.add(wanted(catalogue.items().get(0), workshop));
        List<Remedy> remedies = catalogue.remedies().stream().map(r -> r.id().equals(unit.id()) ? closing(r) : r)
                .toList();
        Catalogue with = new Catalogue(catalogue.version(), items, catalogue.damage(), catalogue.findings(),
                catalogue.findingLinks(), catalogue.accessSteps(), remedies, catalogue.tools(),
                catalogue.moneyLines());
        // Settled on a source that it does not come from: no job of its own.
        planner = new RepairPlanner(with, workshop.withChoice(marker, PartSource.USED), open);
    }

    /** Whether the workshop may fit it at all. */
    boolean possible() {
        return planFor(Set.of()).isPresent();
    }

    @Override
    public Optional<RepairPlan> planFor(Set<String> failed) {
        Set<String> more = new HashSet<>(failed);
        more.add(marker);
        return planner.find(more).found();
    }

    @Override
    public Function<BitSet, Optional<RepairWork>> over(List<String> items) {
        List<String> more = new ArrayList<>(items);
        more.add(marker);
        PatternPlanner plans = planner.over(more);
        return pattern -> {
            BitSet marked = (BitSet) pattern.clone();
            marked.set(items.size());
            return plans.work(marked);
        };
    }

    private Remedy closing(Remedy r) {
        Set<String> closes = new HashSet<>(r.closes());
        closes.add(marker);
        return new Remedy(r.id(), r.name(), closes, r.partSource(), r.parts(), r.jobHours(), r.access(), r.tools(),
                r.success(), r.comeback(), r.wholeUnit(), r.note(), r.source());
    }

    private FailureItem wanted(FailureItem like, Workshop workshop) {
        return new FailureItem(marker, like.system(), "unit to be fitted", like.applies(), like.onset(),
                like.onsetDoubt(), "", Map.of(), Set.of(), HoursRange.of(0, 0, 0),
                MoneyRange.exactly(Money.zero(workshop.currency())), List.of(), Set.of(), Set.of(), "",
                like.source());
    }
}
