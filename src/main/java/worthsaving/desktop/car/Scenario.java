package worthsaving.desktop.car;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import worthsaving.vehicle.Listing;
import worthsaving.vehicle.Observation;
import worthsaving.vehicle.Observation.Sight;
import worthsaving.vehicle.Observation.Witness;

/**
 * A car as the user sees it now: what is known of it, and where the levers stand. Immutable; every edit is
 * a new scenario.
 *
 * @param levers values of the levers that were moved
 */
public record Scenario(Listing listing, Map<Dial, Double> levers) {

    public Scenario {
        Objects.requireNonNull(listing, "listing");
        levers = Map.copyOf(levers);
    }

    public static Scenario of(Listing listing) {
        return new Scenario(listing, Map.of());
    }

    public Scenario with(Dial lever, double value) {
        Map<Dial, Double> more = new HashMap<>(levers);
        more.put(lever, value);
        return new Scenario(listing, more);
    }

    /** The lever back where the settings or the listing have it. */
    public Scenario without(Dial lever) {
        Map<Dial, Double> fewer = new HashMap<>(levers);
        fewer.remove(lever);
        return new Scenario(listing, fewer);
    }

    public Optional<Double> lever(Dial lever) {
        return Optional.ofNullable(levers.get(lever));
    }

    /** Chances of items that the user has set, by item id. */
    public Map<String, Double> chances() {
        Map<String, Double> chances = new HashMap<>();
        levers.forEach((dial, value) -> {
            if (dial instanceof ItemDial item) {
                chances.put(item.item(), value / 100);
            }
        });
        return Map.copyOf(chances);
    }

    /** The same levers on a listing that was corrected. */
    public Scenario withListing(Listing other) {
        return new Scenario(other, levers);
    }

    /** What the user saw with own eyes; {@code NOT_LOOKED_AT} takes it back. The seller's word stays. */
    public Scenario seen(String subject, Sight sight) {
        List<Observation> observations = new ArrayList<>(listing.observations());
        observations.removeIf(o -> o.subject().equals(subject) && o.witness() == Witness.OWN_EYES);
        if (sight != Sight.NOT_LOOKED_AT) {
            observations.add(new Observation(subject, sight, Witness.OWN_EYES));
        }
        Listing l = listing;
        return withListing(new Listing(l.id(), l.vehicle(), l.ask(), l.seen(), l.towMiles(), l.exposure(), observations,
                l.story(), l.origin()));
    }

    /** What a witness says of a subject now. */
    public Sight sight(String subject, Witness witness) {
        return listing.observations().stream()
                .filter(o -> o.subject().equals(subject) && o.witness() == witness)
                .reduce((earlier, later) -> later)
                .map(Observation::sight)
                .orElse(Sight.NOT_LOOKED_AT);
    }

    /** Whether nothing but levers differs from another scenario. */
    boolean sameCar(Scenario other) {
        return listing.equals(other.listing);
    }
}
