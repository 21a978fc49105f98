package worthsaving.diagnosis;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.IntStream;
import worthsaving.quantity.Probability;

/** What the evidence says about every item of one car. Immutable; what is costly is worked out when asked for. */
public final class Diagnosis {

    private final FailureNetwork network;
    private final Evidence evidence;
    private final Posterior posterior;
    private volatile Map<String, Posterior> leaveOneOut;

    Diagnosis(FailureNetwork network, Evidence evidence, Posterior posterior) {
        this.network = network;
        this.evidence = evidence;
        this.posterior = posterior;
    }

    public Evidence evidence() {
        return evidence;
    }

    public FailureNetwork network() {
        return network;
    }

    /** One per item of the network, in its order. */
    public List<Belief> beliefs() {
        return IntStream.range(0, network.items().size()).mapToObj(this::belief).toList();
    }

    /** @throws IllegalArgumentException for an item that this car cannot have */
    public Belief belief(String item) {
        return belief(number(item));
    }

    private Belief belief(int item) {
        return new Belief(
                network.items().get(item),
                Probability.of(network.prior().marginal(item)),
                Probability.of(posterior.marginal(item)));
    }

    /** Natural logarithm of P(evidence); virtual evidence counts with its likelihoods. */
    public double logEvidence() {
        return posterior.logWeight() - network.prior().logWeight();
    }

    /**
     * Half-width of a 95 % interval for every posterior by itself: zero when they are exact, above zero
     * when the width guard made the network fall back on sampling.
     */
    public double error() {
        return posterior.error();
    }

    /** P(finding present | evidence): certain when it was seen with certainty. */
    public Probability predictive(String finding) {
        Likelihood seen = evidence.findings().get(finding);
        if (seen == null) {
            return Probability.of(posterior.chance(finding));
        }
        double before = leaveOneOut().get(finding).chance(finding);
        double present = seen.ifTrue() * before;
        return Probability.of(present / (present + seen.ifFalse() * (1 - before)));
    }

    /** Every piece of evidence with its pull on an item, strongest first. */
    public List<Influence> influences(String item) {
        int index = number(item);
        double with = posterior.marginal(index);
        List<Influence> influences = new ArrayList<>();
        leaveOneOut().forEach((subject, without) -> {
            Likelihood seen = evidence.findings().getOrDefault(subject, evidence.items().get(subject));
            influences.add(new Influence(subject, seen, logRatio(with, without.marginal(index))));
        });
        influences.sort(Comparator.comparingDouble(i -> -Math.abs(i.logRatio())));
        return influences;
    }

    private static double logRatio(double with, double without) {
        return with == without ? 0 : logit(with) - logit(without);
    }

    private static double logit(double p) {
        return Math.log(p) - Math.log1p(-p);
    }

    /** The {@code count} most probable joint states of the items that moved most; empty when none moved. */
    public List<Story> stories(int count) {
        return StorySearch.stories(network.items(), network.prior(), posterior, count);
    }

    /**
     * Sum of log P(e_i) over the pieces of evidence, minus log P(all of them): above zero the pieces
     * agree less than if they were independent, which points to an error of observation or a case that
     * the catalogue does not know. Source: Jensen, Chamberlain, Nordahl and Jensen (1990), UAI 6:519.
     */
    public double conflict() {
        double single = 0;
        for (Map.Entry<String, Likelihood> seen : new TreeMap<>(evidence.findings()).entrySet()) {
            single += logChance(network.prior().chance(seen.getKey()), seen.getValue());
        }
        for (Map.Entry<String, Likelihood> seen : new TreeMap<>(evidence.items()).entrySet()) {
            double prior = network.indexOf(seen.getKey()).map(network.prior()::marginal).orElse(0.0);
            single += logChance(prior, seen.getValue());
        }
        return single - logEvidence();
    }

    private static double logChance(double yes, Likelihood seen) {
        return Math.log(seen.ifTrue() * yes + seen.ifFalse() * (1 - yes));
    }

    /** Sets of items failed together, with weights. */
    public FailurePatterns patterns(PatternSettings settings) {
        return PatternSearch.patterns(network, posterior, settings);
    }

    private int number(String item) {
        return network.indexOf(item).orElseThrow(
                () -> new IllegalArgumentException("this car has no item called '" + item + "'"));
    }

    private Map<String, Posterior> leaveOneOut() {
        Map<String, Posterior> known = leaveOneOut;
        if (known == null) {
            known = new TreeMap<>();
            for (String finding : evidence.findings().keySet()) {
                known.put(finding, network.solve(evidence.withoutFinding(finding)));
            }
            for (String item : evidence.items().keySet()) {
                known.put(item, network.solve(evidence.withoutItem(item)));
            }
            leaveOneOut = known;
        }
        return known;
    }
}
