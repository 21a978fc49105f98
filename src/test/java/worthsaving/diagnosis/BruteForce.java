package worthsaving.diagnosis;

import java.util.List;
import java.util.stream.IntStream;
import worthsaving.catalog.Catalogue;
import worthsaving.catalog.DamageLink;
import worthsaving.catalog.FailureItem;
import worthsaving.catalog.FindingKind;
import worthsaving.catalog.FindingLink;
import worthsaving.quantity.Distance;
import worthsaving.vehicle.Exposure;

/** The definitions, state by state, over every set of failed items; nothing shared with the engine. */
final class BruteForce {

    private final Catalogue catalogue;
    private final Exposure exposure;
    private final double years;
    private final double[] weights;

    /** @param years age, at 12,000 miles a year */
    BruteForce(Catalogue catalogue, Exposure exposure, double years, Evidence evidence) {
        this.catalogue = catalogue;
        this.exposure = exposure;
        this.years = years;
        weights = IntStream.range(0, 1 << catalogue.items().size())
                .mapToDouble(s -> weight(s, evidence))
                .toArray();
    }

    private double weight(int state, Evidence evidence) {
        double p = exclusive(state) ? 1 : 0;
        for (FailureItem item : catalogue.items()) {
            double failed = failure(item, state);
            p *= has(state, item.id()) ? failed : 1 - failed;
            Likelihood seen = evidence.items().getOrDefault(item.id(), Likelihood.NOTHING);
            p *= has(state, item.id()) ? seen.ifTrue() : seen.ifFalse();
        }
        for (FindingKind finding : catalogue.findings()) {
            Likelihood seen = evidence.findings().get(finding.id());
            if (seen != null) {
                double present = present(finding, state);
                p *= seen.ifTrue() * present + seen.ifFalse() * (1 - present);
            }
        }
        return p;
    }

    private boolean has(int state, String item) {
        List<FailureItem> items = catalogue.items();
        for (int i = 0; i < items.size(); i++) {
            if (items.get(i).id().equals(item)) {
                return (state >> i & 1) == 1;
            }
        }
        throw new AssertionError(item);
    }

    private boolean exclusive(int state) {
        return catalogue.items().stream()
                        .filter(i -> !i.exclusiveGroup().isBlank() && has(state, i.id()))
                        .map(FailureItem::exclusiveGroup)
                        .distinct()
                        .count()
                == catalogue.items().stream()
                        .filter(i -> !i.exclusiveGroup().isBlank() && has(state, i.id()))
                        .count();
    }

    private double failure(FailureItem item, int state) {
        double sound = 1 - item.onset().prior(years, Distance.ofMiles(12_000 * years)).value();
        for (DamageLink link : catalogue.damage()) {
            if (link.effect().equals(item.id()) && has(state, link.cause())) {
                sound *= 1 - link.chance(exposure).value();
            }
        }
        return 1 - sound;
    }

    private double present(FindingKind finding, int state) {
        double absent = 1 - finding.falseRate().mode();
        for (FindingLink link : catalogue.findingLinks()) {
            if (link.finding().equals(finding.id()) && has(state, link.item())) {
                absent *= 1 - link.chance().mode();
            }
        }
        return 1 - absent;
    }

    /** P(evidence and at most one of each group). */
    double total() {
        return IntStream.range(0, weights.length).mapToDouble(s -> weights[s]).sum();
    }

    double probability(int state) {
        return weights[state] / total();
    }

    double marginal(String item) {
        return IntStream.range(0, weights.length)
                        .filter(s -> has(s, item))
                        .mapToDouble(s -> weights[s])
                        .sum()
                / total();
    }

    double chance(String finding) {
        FindingKind kind = catalogue.findingsById().get(finding);
        return IntStream.range(0, weights.length)
                        .mapToDouble(s -> weights[s] * present(kind, s))
                        .sum()
                / total();
    }
}
