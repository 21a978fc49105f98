package worthsaving.diagnosis;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import worthsaving.catalog.Catalogue;
import worthsaving.catalog.FailureItem;
import worthsaving.diagnosis.inference.BucketTree;
import worthsaving.diagnosis.inference.NoisyOr;
import worthsaving.diagnosis.inference.TableList;
import worthsaving.quantity.Probability;
import worthsaving.quantity.Seed;
import worthsaving.vehicle.Exposure;
import worthsaving.vehicle.Powertrain.Engine;
import worthsaving.vehicle.Vehicle;

/**
 * The failure items and findings of the catalogue as a Bayesian network for one car.
 *
 * <p>An item fails on its own with its prior at the car's age and mileage, or by secondary damage:
 * P(failed | causes) = 1 - (1 - prior) prod over failed causes (1 - chance). A finding is a noisy-OR of
 * the items that produce it, its false rate as leak. Ranges enter with their mode. Items of one
 * exclusive group never fail together: the joint is conditioned on at most one of each. What the
 * powertrain leaves open is a hidden variable, so that items that exclude each other by powertrain
 * never fail together either.
 */
public final class FailureNetwork {

    /** Draws of the fallback; at even weights the error is below a third of a percentage point. */
    private static final int FALLBACK_DRAWS = 100_000;

    /** One kind of engine with its items and their numbers in the whole network. */
    private record Variant(double share, FailureModel model, int[] own) {}

    private final List<String> items;
    private final Map<String, Integer> indexOf;
    private final Map<String, NoisyOr> findings;
    private final Set<String> catalogueItems;
    private final List<Variant> variants;
    private final List<String> assumptions;
    private final int coordinates;
    private final Posterior prior;

    private FailureNetwork(Catalogue catalogue, List<FailureModel> models, double[] shares, List<String> assumptions,
            Map<String, Probability> unmentioned) {
        items = catalogue.items().stream()
                .map(FailureItem::id)
                .filter(id -> models.stream().anyMatch(m -> m.indexOf().containsKey(id)))
                .toList();
        indexOf = IntStream.range(0, items.size()).boxed().collect(Collectors.toMap(items::get, i -> i));
        catalogueItems = catalogue.itemsById().keySet();
        findings = FailureModel.findings(catalogue, indexOf, unmentioned);
        variants = IntStream.range(0, shares.length)
                .mapToObj(k -> new Variant(shares[k], models.get(k), numbers(models.get(k))))
                .toList();
        this.assumptions = assumptions;
        coordinates = FailureModel.coordinates(catalogue);
        prior = solve(Evidence.NONE);
    }

    private int[] numbers(FailureModel model) {
        return items.stream().mapToInt(id -> model.indexOf().getOrDefault(id, -1)).toArray();
    }

    /** Ages are counted to the day {@code on}. */
    public static FailureNetwork of(Catalogue catalogue, Vehicle vehicle, Exposure exposure, LocalDate on) {
        return of(catalogue, vehicle, exposure, on, Map.of());
    }

    /**
     * As above, for a seller who was free to tell and did not.
     *
     * @param unmentioned findings that he told nothing of, each with the chance that he would have told of it
     * @throws IllegalArgumentException for a finding that the catalogue does not know
     */
    public static FailureNetwork of(
            Catalogue catalogue,
            Vehicle vehicle,
            Exposure exposure,
            LocalDate on,
            Map<String, Probability> unmentioned) {
        Set<String> known = catalogue.findingsById().keySet();
        unmentioned.keySet().stream().filter(id -> !known.contains(id)).findFirst().ifPresent(id -> {
            throw new IllegalArgumentException("the catalogue has no finding called '" + id + "'");
        });
        PowertrainShares shares = PowertrainShares.USUAL;
        CarAge age = CarAge.of(vehicle, on);
        List<String> assumptions = new ArrayList<>(age.assumptions());
        assumptions.addAll(shares.assumptions(vehicle.powertrain()));
        List<FailureModel> models = new ArrayList<>();
        Map<Engine, Double> engines = shares.engines(vehicle.powertrain());
        for (Engine engine : engines.keySet()) {
            PowertrainBits powertrain = new PowertrainBits(engine, vehicle.powertrain(), shares);
            models.add(FailureModel.of(catalogue, powertrain, exposure, age, unmentioned));
        }
        double[] weights = engines.values().stream().mapToDouble(Double::doubleValue).toArray();
        return new FailureNetwork(catalogue, models, weights, List.copyOf(assumptions), unmentioned);
    }

    /** Ids of the items that this car can have, in catalogue order. */
    public List<String> items() {
        return items;
    }

    /** What the car's description left open and what was assumed for it, in words. */
    public List<String> assumptions() {
        return assumptions;
    }

    /**
     * @throws ImpossibleEvidenceException when the evidence has probability zero
     * @throws IllegalArgumentException for a finding or item that the catalogue does not know
     */
    public Diagnosis diagnose(Evidence evidence) {
        Outcome outcome = attempt(evidence);
        if (outcome instanceof Outcome.Impossible impossible) {
            throw new ImpossibleEvidenceException(impossible);
        }
        return ((Outcome.Explained) outcome).diagnosis();
    }

    /** As {@link #diagnose}, with impossible evidence as a result. */
    public Outcome attempt(Evidence evidence) {
        Posterior posterior = solve(evidence);
        return posterior.possible()
                ? new Outcome.Explained(new Diagnosis(this, evidence, posterior))
                : new Outcome.Impossible(conflicting(evidence));
    }

    /** Drops what can be dropped while the rest stays impossible. */
    private List<String> conflicting(Evidence evidence) {
        Evidence core = evidence;
        List<String> names = new ArrayList<>();
        for (String finding : evidence.findings().keySet().stream().sorted().toList()) {
            Evidence without = core.withoutFinding(finding);
            if (solve(without).possible()) {
                names.add(finding);
            } else {
                core = without;
            }
        }
        for (String item : evidence.items().keySet().stream().sorted().toList()) {
            Evidence without = core.withoutItem(item);
            if (solve(without).possible()) {
                names.add(item);
            } else {
                core = without;
            }
        }
        return names;
    }

    /**
     * P(finding present | exactly these items have failed).
     *
     * @param pattern bits by position in {@link #items}
     * @throws IllegalArgumentException for a finding that the catalogue does not know
     */
    public double findingChance(String finding, BitSet pattern) {
        return finding(finding).chance(pattern::get);
    }

    /** The same for many patterns at once. */
    public FindingChances findingChances(List<BitSet> patterns) {
        return new FindingChances(this, patterns);
    }

    NoisyOr finding(String id) {
        return findings.get(requireFinding(id));
    }

    Posterior solve(Evidence evidence) {
        evidence.findings().keySet().forEach(this::requireFinding);
        evidence.items().keySet().forEach(this::requireItem);
        List<MixedPosterior.Part> parts = variants.stream()
                .map(v -> new MixedPosterior.Part(v.share(), v.own(), solve(v.model(), evidence)))
                .toList();
        return parts.size() == 1 ? parts.get(0).posterior() : new MixedPosterior(parts);
    }

    private static Posterior solve(FailureModel model, Evidence evidence) {
        return ExactPosterior.of(model, evidence, TableList.DEFAULT_FAN_IN, BucketTree.WIDTH_GUARD)
                .map(Posterior.class::cast)
                .orElseGet(() -> SampledPosterior.of(model, evidence, FALLBACK_DRAWS, Seed.DEFAULT));
    }

    private void requireItem(String id) {
        if (!catalogueItems.contains(id)) {
            throw new IllegalArgumentException("the catalogue has no item called '" + id + "'");
        }
    }

    private String requireFinding(String id) {
        if (!findings.containsKey(id)) {
            throw new IllegalArgumentException("the catalogue has no finding called '" + id + "'");
        }
        return id;
    }

    Optional<Integer> indexOf(String item) {
        return Optional.ofNullable(indexOf.get(item));
    }

    Posterior prior() {
        return prior;
    }

    /** Coordinates of the quasi-random sequence that a draw uses. */
    int coordinates() {
        return coordinates;
    }
}
