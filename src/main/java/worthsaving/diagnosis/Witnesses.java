package worthsaving.diagnosis;

import java.util.Collection;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;
import worthsaving.catalog.Catalogue;
import worthsaving.catalog.FailureItem;
import worthsaving.catalog.FindingKind;
import worthsaving.quantity.Probability;
import worthsaving.vehicle.Listing;
import worthsaving.vehicle.Observation;
import worthsaving.vehicle.Observation.Sight;
import worthsaving.vehicle.Observation.Witness;

/** Turns what was seen and what was said into evidence. */
public final class Witnesses {

    private static final Set<String> PRAISE = Set.of("new", "like new", "excellent", "good");

    private final Set<String> findings;
    private final Set<String> items;
    private final Set<String> advertised;
    private final SellerTrust trust;

    public Witnesses(Catalogue catalogue, SellerTrust trust) {
        this.findings = catalogue.findings().stream().map(FindingKind::id).collect(Collectors.toUnmodifiableSet());
        this.items = catalogue.items().stream().map(FailureItem::id).collect(Collectors.toUnmodifiableSet());
        this.advertised = catalogue.findings().stream()
                .filter(f -> f.stage() == FindingKind.Stage.ADVERT)
                .map(FindingKind::id)
                .collect(Collectors.toUnmodifiableSet());
        this.trust = Objects.requireNonNull(trust, "trust");
    }

    /**
     * Own eyes overrule the seller on the same subject, whatever the order; of two equal witnesses the
     * later one counts. "Unsure" and "not looked at" say nothing.
     *
     * @throws IllegalArgumentException for a subject that the catalogue does not know
     */
    public Evidence evidence(Collection<Observation> observations) {
        Evidence evidence = Evidence.NONE;
        for (Witness witness : new Witness[] {Witness.SELLER, Witness.OWN_EYES}) {
            for (Observation o : observations) {
                if (o.witness() == witness && speaks(o)) {
                    evidence = add(evidence, o);
                }
            }
        }
        return evidence;
    }

    /**
     * What an advert would name and this one does not: every finding of the advert stage that nobody said
     * anything of, with the chance that the seller would have.
     */
    public Map<String, Probability> unmentioned(Listing listing) {
        Set<String> named = listing.observations().stream().map(Observation::subject).collect(Collectors.toSet());
        Probability mention = mention(listing);
        Map<String, Probability> silent = new TreeMap<>();
        for (String finding : advertised) {
            if (!named.contains(finding)) {
                silent.put(finding, mention);
            }
        }
        return silent;
    }

    private Probability mention(Listing listing) {
        boolean complained = listing.observations().stream()
                .anyMatch(o -> o.sight() == Sight.PRESENT && advertised.contains(o.subject()));
        if (complained) {
            return trust.mentionsFurther();
        }
        return PRAISE.contains(listing.vehicle().condition().orElse(""))
                ? trust.mentionsPraising() : trust.mentions();
    }

    private static boolean speaks(Observation o) {
        return o.sight() == Sight.PRESENT || o.sight() == Sight.ABSENT;
    }

    private Evidence add(Evidence evidence, Observation o) {
        boolean present = o.sight() == Sight.PRESENT;
        if (findings.contains(o.subject())) {
            return evidence.withFinding(
                    o.subject(), weigh(o, present, trust.admitsFinding(), trust.deniesFinding()));
        }
        if (items.contains(o.subject())) {
            return evidence.withItem(o.subject(), weigh(o, present, trust.namesItem(), trust.deniesItem()));
        }
        throw new IllegalArgumentException("neither a finding nor an item of the catalogue: " + o.subject());
    }

    private static Likelihood weigh(Observation o, boolean present, Likelihood admits, Likelihood denies) {
        if (o.witness() == Witness.SELLER) {
            return present ? admits : denies;
        }
        return present ? Likelihood.TRUE : Likelihood.FALSE;
    }
}
