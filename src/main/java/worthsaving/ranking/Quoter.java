package worthsaving.ranking;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import worthsaving.catalog.Catalogue;
import worthsaving.catalog.FailureItem;
import worthsaving.catalog.Flag;
import worthsaving.deal.DealCase;
import worthsaving.deal.DealEngine;
import worthsaving.deal.Labour;
import worthsaving.deal.Outcome;
import worthsaving.deal.Repairs;
import worthsaving.deal.Term;
import worthsaving.diagnosis.Belief;
import worthsaving.diagnosis.FailurePatterns;
import worthsaving.quantity.Money;
import worthsaving.ranking.ShopQuote.CallPoint;
import worthsaving.repair.RepairPlan;
import worthsaving.repair.RepairPlanner;
import worthsaving.repair.Worker;
import worthsaving.repair.Workshop;

/**
 * Writes a workshop's quote for a car that was judged. Only the complaint is quoted: items that the findings
 * made likelier; faults usual at the car's age and work done to sell it are another order.
 */
public final class Quoter {

    /** A finding rarer than this is no reason to ring beforehand; common practice, no source. */
    private static final double OFTEN_ENOUGH = 0.05;
    /** Change of the price that the owner is rung for, as a share of it; common practice, no source. */
    private static final double WORTH_A_CALL = 0.05;
    private static final double LIFTED = 1.2;
    private static final double CEILING = 0.95;
    private static final double ROUND_TO = 10;

    private final JudgeSettings settings;
    private final Workshop shop;
    private final RepairPlanner planner;
    private final Map<String, FailureItem> items;

    /** @param hourly the shop's rate */
    public Quoter(Catalogue catalogue, JudgeSettings settings, Money hourly) {
        this(catalogue, settings, hourly, Set.of());
    }

    /**
     * For a car that is partly open.
     *
     * @param open ids of access steps that are open, whose hours are on the bill already
     */
    public Quoter(Catalogue catalogue, JudgeSettings settings, Money hourly, Set<String> open) {
        this.settings = settings;
        this.shop = settings.workshop().withWorker(new Worker.Shop(Worker.Shop.Kind.INDEPENDENT, hourly));
        this.planner = new RepairPlanner(catalogue, shop, open);
        this.items = catalogue.itemsById();
    }

    /**
     * @param ceiling agreed with the owner; without one, the price not exceeded with 95 %, rounded up
     * @return empty when nothing is suspected, or nothing allowed mends it
     */
    public Optional<ShopQuote> write(Appraisal appraisal, Optional<Money> ceiling) {
        Map<String, Double> complaint = complaint(appraisal);
        Set<String> likely = likely(complaint);
        Optional<RepairPlan> plan = planner.find(likely).found();
        Optional<Outcome> price = price(appraisal, complaint.keySet());
        if (likely.isEmpty() || plan.isEmpty() || price.isEmpty()) {
            return Optional.empty();
        }
        Money rate = shop.worker().hourly();
        Money most = ceiling.orElseGet(() -> new Money(
                Math.ceil(price.get().quantile(CEILING) / ROUND_TO) * ROUND_TO, rate.currency()));
        Money inPieces = appraisal.value().mean().times(settings.terms().mean(Term.ASIS_SHARE) / 100
                * settings.terms().mean(Term.OPENED_UP_SHARE) / 100);
        List<CallPoint> calls = calls(complaint, likely, plan.get());
        return Optional.of(new ShopQuote(planner.quote(plan.get()), names(likely), price.get(), most,
                rate.times(settings.terms().mean(Term.OPEN_UP_HOURS)), inPieces,
                calls, cautions(likely, calls)));
    }

    /** Items of the complaint with their probability. */
    private Map<String, Double> complaint(Appraisal appraisal) {
        return appraisal.diagnosis().beliefs().stream()
                .filter(b -> b.posterior().value() >= OFTEN_ENOUGH
                        && b.posterior().value() > LIFTED * b.prior().value())
                .filter(b -> !items.get(b.item()).flags().contains(Flag.SALE_PREPARATION))
                .collect(Collectors.toMap(Belief::item, b -> b.posterior().value()));
    }

    /** Likelier failed than not; the most probable one when none is. */
    private static Set<String> likely(Map<String, Double> complaint) {
        Set<String> likely = complaint.entrySet().stream().filter(e -> e.getValue() > 0.5).map(Map.Entry::getKey)
                .collect(Collectors.toCollection(TreeSet::new));
        if (likely.isEmpty()) {
            complaint.entrySet().stream()
                    .max(Map.Entry.<String, Double>comparingByValue().thenComparing(Map.Entry::getKey))
                    .ifPresent(e -> likely.add(e.getKey()));
        }
        return likely;
    }

    private Optional<Outcome> price(Appraisal appraisal, Set<String> complaint) {
        FailurePatterns all = appraisal.diagnosis().patterns(settings.patterns());
        BitSet asked = new BitSet();
        for (int i = 0; i < all.items().size(); i++) {
            asked.set(i, complaint.contains(all.items().get(i)));
        }
        List<BitSet> patterns = all.patterns().stream().map(p -> {
            BitSet only = (BitSet) p.clone();
            only.and(asked);
            return only;
        }).toList();
        Worker worker = shop.worker();
        DealCase deal = new DealCase(
                new FailurePatterns(all.items(), patterns, all.weights(), all.enumerated(), all.drawn()),
                Repairs.cheapest(planner), new Labour(worker.hourly(), false, worker::factor), appraisal.value(), 0,
                appraisal.listing().vehicle().title(), items, settings.method());
        return DealEngine.prepare(deal).repairCost(settings.terms());
    }

    private List<CallPoint> calls(Map<String, Double> complaint, Set<String> likely, RepairPlan plan) {
        List<CallPoint> calls = new ArrayList<>();
        complaint.forEach((item, p) -> {
            boolean sound = likely.contains(item);
            double chance = sound ? 1 - p : p;
            Set<String> then = new HashSet<>(likely);
            if (sound) {
                then.remove(item);
            } else {
                then.add(item);
            }
            planner.find(then).found().filter(x -> chance >= OFTEN_ENOUGH).ifPresent(x -> {
                Money change = x.meanCost().minus(plan.meanCost());
                if (Math.abs(change.amount()) >= WORTH_A_CALL * plan.meanCost().amount()) {
                    calls.add(new CallPoint(item, items.get(item).name(), sound, chance, change, x.meanCost()));
                }
            });
        });
        calls.sort(Comparator.comparing(CallPoint::change).reversed().thenComparing(CallPoint::item));
        return calls;
    }

    private List<String> cautions(Set<String> likely, List<CallPoint> calls) {
        Set<String> all = new TreeSet<>(likely);
        calls.forEach(c -> all.add(c.item()));
        return all.stream().map(items::get).filter(i -> !i.caution().isBlank())
                .map(i -> i.name() + ": " + i.caution()).toList();
    }

    private List<String> names(Set<String> ids) {
        return ids.stream().map(id -> items.get(id).name()).toList();
    }
}
