package worthsaving.repair;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.Collection;
import java.util.Comparator;
import java.util.Currency;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import worthsaving.catalog.Catalogue;
import worthsaving.catalog.FailureItem;
import worthsaving.catalog.PartSource;
import worthsaving.catalog.Remedy;
import worthsaving.catalog.Tool;
import worthsaving.quantity.Money;
import worthsaving.quantity.MoneyRange;
import worthsaving.quantity.Probability;
import worthsaving.repair.RepairPlan.Job;

/** Catalogue and workshop boiled down to arrays: what each job closes, reaches, needs and costs. */
final class JobTable {

    /**
     * A job that the workshop allows.
     *
     * @param closes indices of items
     * @param access the steps it needs, requirements included
     * @param steps the same as ascending indices
     * @param tools indices of tools that would have to be bought
     * @param hours own hours at the worker's speed
     * @param aloneHours own hours and access when nothing is shared
     * @param cost parts, consumables and own hours, at the mean
     * @param reserve chance of doing it again times its cost alone
     */
    record Entry(
            Job job, int[] closes, BitSet access, int[] steps, int[] tools, double hours, double aloneHours,
            double cost, double reserve) {

        double direct() {
            return cost + reserve;
        }
    }

    final Workshop shop;
    final PartChoice parts;
    final AccessTable access;
    /** As if nothing were open: what doing a job again takes. */
    private final AccessTable closed;
    final FailureItem[] items;
    final Map<String, Integer> itemIndex = new HashMap<>();
    final List<Remedy> remedies;
    final Tool[] tools;
    final double[] toolPrice;
    final RepairPlan.Purchase[] purchases;
    final Entry[] jobs;
    /** By job, what {@link Entry} says of it. */
    final double[] direct;
    final int[][] closes;
    final long[][] accessOf;
    /** Indices of the jobs that close each item. */
    final int[][] closedBy;
    /** By item: the steps of the jobs that close it, with those that could ease them; the easing ones among these. */
    final BitSet[] reach;
    final BitSet[] easing;
    final double rate;
    private final Map<String, Integer> toolIndex = new HashMap<>();
    private final Map<String, Map<String, Double>> damage = new HashMap<>();

    JobTable(Catalogue catalogue, Workshop shop) {
        this(catalogue, shop, Set.of());
    }

    /** @param open ids of access steps that are open now, with all they require */
    JobTable(Catalogue catalogue, Workshop shop, Set<String> open) {
        this.shop = shop;
        catalogue.damage().forEach(link -> damage.computeIfAbsent(link.cause(), c -> new HashMap<>())
                .put(link.effect(), link.chance().mode()));
        rate = shop.worker().hourly().amount();
        remedies = catalogue.remedies();
        parts = new PartChoice(shop, remedies);
        access = new AccessTable(catalogue.accessSteps(), open, shop.worker());
        closed = open.isEmpty() ? access : new AccessTable(catalogue.accessSteps(), shop.worker());
        items = catalogue.items().stream().sorted(Comparator.comparing(FailureItem::id)).toArray(FailureItem[]::new);
        for (int i = 0; i < items.length; i++) {
            itemIndex.put(items[i].id(), i);
        }
        tools = catalogue.tools().stream().sorted(Comparator.comparing(Tool::id)).toArray(Tool[]::new);
        toolPrice = new double[tools.length];
        purchases = Stream.of(tools)
                .map(t -> new RepairPlan.Purchase(t.id(), t.name(), t.price()))
                .toArray(RepairPlan.Purchase[]::new);
        for (int t = 0; t < tools.length; t++) {
            toolIndex.put(tools[t].id(), t);
            toolPrice[t] = mean(tools[t].price(), tools[t].id());
        }
        jobs = Stream.concat(
                        Stream.of(items).map(this::ownJob).flatMap(Optional::stream),
                        remedies.stream()
                                .sorted(Comparator.comparing(Remedy::id))
                                .filter(this::allowed)
                                .map(this::remedyJob))
                .toArray(Entry[]::new);
        direct = Stream.of(jobs).mapToDouble(Entry::direct).toArray();
        closes = Stream.of(jobs).map(Entry::closes).toArray(int[][]::new);
        accessOf = Stream.of(jobs).map(job -> Bits.of(job.access(), access.size())).toArray(long[][]::new);
        closedBy = closedBy();
        reach = new BitSet[items.length];
        easing = new BitSet[items.length];
        for (int i = 0; i < items.length; i++) {
            reach[i] = new BitSet();
            for (int j : closedBy[i]) {
                reach[i].or(jobs[j].access());
            }
            easing[i] = access.widenByEasing(reach[i]);
        }
    }

    /** Chance that a failed cause kills an item, exposure unknown; zero when the catalogue does not say so. */
    double damage(String cause, String effect) {
        return damage.getOrDefault(cause, Map.of()).getOrDefault(effect, 0.0);
    }

    /** The item's own job, empty when no part source is allowed. */
    private Optional<Entry> ownJob(FailureItem item) {
        mean(item.consumables(), item.id());
        item.parts().values().forEach(price -> mean(price, item.id()));
        return parts.best(item, labourAlone(item)).map(offer -> {
            Job job = new Job(item.id(), item.name(), Set.of(item.id()), offer.source(), offer.price(),
                    item.consumables(), item.jobHours(), Probability.CERTAIN,
                    Probability.of(offer.comeback().mean()), false);
            double reserve = offer.expectedCost().amount() - offer.price().mean().amount();
            return entry(job, item.access(), item.tools(), reserve);
        });
    }

    /** Cost of the hours of an item's own job when nothing is shared. */
    Money labourAlone(FailureItem item) {
        double hours = closed.hoursOf(closed.union(item.access()))
                + item.jobHours().mean().value() * shop.worker().factor(item.id());
        return new Money(hours * rate, shop.currency());
    }

    private boolean allowed(Remedy remedy) {
        boolean usedUnit = remedy.wholeUnit() && remedy.partSource() == PartSource.USED;
        return shop.allowedSources().contains(remedy.partSource())
                && (shop.usedUnits() || !usedUnit)
                && remedy.success().compareTo(shop.leastSuccess()) >= 0;
    }

    private Entry remedyJob(Remedy remedy) {
        if (itemIndex.containsKey(remedy.id())) {
            throw new IllegalArgumentException("remedy " + remedy.id() + " has the id of an item: rename one of them");
        }
        double price = mean(remedy.parts(), remedy.id());
        Job job = new Job(remedy.id(), remedy.name(), remedy.closes(), remedy.partSource(), remedy.parts(),
                MoneyRange.exactly(Money.zero(shop.currency())), remedy.jobHours(), remedy.success(),
                remedy.comeback(), remedy.wholeUnit());
        double alone = closed.hoursOf(closed.union(remedy.access()))
                + remedy.jobHours().mean().value() * shop.worker().factor(remedy.id());
        // Done again when it does not work, or works and comes back.
        double again = 1 - remedy.success().value() * (1 - remedy.comeback().value());
        return entry(job, remedy.access(), remedy.tools(), again * (price + alone * rate));
    }

    private Entry entry(Job job, Collection<String> steps, List<String> needed, double reserve) {
        BitSet reach = access.union(steps);
        double hours = job.hours().mean().value() * shop.worker().factor(job.id());
        double cost = job.parts().mean().amount() + job.consumables().mean().amount() + hours * rate;
        int[] closes = job.closes().stream().mapToInt(itemIndex::get).sorted().toArray();
        int[] buys = needed.stream().distinct().filter(t -> !shop.owns(t)).mapToInt(this::tool).sorted().toArray();
        return new Entry(job.reachedBy(access.ids(reach)), closes, reach, reach.stream().toArray(), buys, hours,
                hours + access.hoursOf(reach), cost, reserve);
    }

    /** @throws IllegalArgumentException if the workshop does not offer the job */
    Entry entry(String jobId) {
        return Stream.of(jobs)
                .filter(entry -> entry.job().id().equals(jobId))
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException("this workshop has no job " + jobId
                        + ": ask the planner that made the plan"));
    }

    boolean needs(Entry entry, String tool) {
        int index = tool(tool);
        return Arrays.stream(entry.tools()).anyMatch(t -> t == index);
    }

    private int tool(String id) {
        return Objects.requireNonNull(toolIndex.get(id), () -> "the catalogue has no tool " + id);
    }

    private int[][] closedBy() {
        List<List<Integer>> lists = new ArrayList<>();
        for (int i = 0; i < items.length; i++) {
            lists.add(new ArrayList<>());
        }
        for (int j = 0; j < jobs.length; j++) {
            for (int i : jobs[j].closes()) {
                lists.get(i).add(j);
            }
        }
        return lists.stream().map(l -> l.stream().mapToInt(Integer::intValue).toArray()).toArray(int[][]::new);
    }

    private double mean(MoneyRange price, String id) {
        Currency currency = shop.currency();
        if (!price.currency().equals(currency)) {
            throw new IllegalArgumentException(id + " is priced in " + price.currency() + " but the workshop counts in "
                    + currency + ": convert the catalogue first, nothing here converts");
        }
        return price.mean().amount();
    }
}
