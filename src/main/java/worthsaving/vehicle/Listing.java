package worthsaving.vehicle;

import java.time.LocalDate;
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
}
