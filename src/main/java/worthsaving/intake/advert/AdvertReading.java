package worthsaving.intake.advert;

import java.time.LocalDate;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import worthsaving.vehicle.Listing;

/**
 * An advert as read.
 *
 * @param text the advert with contact data starred out; every {@link Span} points into it
 * @param on the day it was read
 * @param notes what the reader wants said: cut text, missing fields
 */
public record AdvertReading(
        String text,
        LocalDate on,
        CarReading car,
        OfferReading offer,
        ConditionReading condition,
        Optional<String> pricedAs,
        List<String> notes) {

    public AdvertReading {
        Objects.requireNonNull(text, "text");
        Objects.requireNonNull(on, "on");
        notes = List.copyOf(notes);
    }

    /**
     * As a listing: what is stated is known, what is guessed is assumed with its reason. All observations are the
     * seller's word. Failures that merely follow from the symptoms are left out: diagnosis weighs the symptoms itself.
     *
     * @param id unique within a lot
     * @param origin where the text came from
     */
    public Listing toListing(String id, String origin) {
        return ListingMaker.listing(this, id, origin);
    }
}
