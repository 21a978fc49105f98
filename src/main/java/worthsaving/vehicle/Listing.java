package worthsaving.vehicle;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import worthsaving.quantity.Money;

/**
 * A car on offer.
 *
 * @param id unique within a lot
 * @param ask asking price
 * @param seen the day the listing was read; ages are counted to it
 * @param towMiles one-way distance a tow truck must carry it, in miles
 * @param story the seller's text, kept as it came
 * @param origin where it was read from, such as {@code "lot.csv, row 7"}
 */
public record Listing(
        String id,
        Vehicle vehicle,
        Fact<Money> ask,
        LocalDate seen,
        Fact<Double> towMiles,
        Exposure exposure,
        List<Observation> observations,
        String story,
        String origin) {

    public Listing {
        Objects.requireNonNull(id, "id");
        Objects.requireNonNull(vehicle, "vehicle");
        Objects.requireNonNull(ask, "ask");
        Objects.requireNonNull(seen, "seen");
        Objects.requireNonNull(exposure, "exposure");
        observations = List.copyOf(observations);
    }

    /**
     * The same car with more seen of it; what was seen already with the same eyes stays, unless it was unsure.
     *
     * @param more none of them twice
     */
    public Listing withSeen(List<Observation> more) {
        List<Observation> all = new ArrayList<>(observations);
        for (Observation one : more) {
            all.removeIf(o -> o.subject().equals(one.subject()) && o.witness() == one.witness()
                    && o.sight() != Observation.Sight.PRESENT && o.sight() != Observation.Sight.ABSENT);
            boolean seen = all.stream()
                    .anyMatch(o -> o.subject().equals(one.subject()) && o.witness() == one.witness());
            if (!seen) {
                all.add(one);
            }
        }
        return new Listing(id, vehicle, ask, this.seen, towMiles, exposure, all, story, origin);
    }
}
