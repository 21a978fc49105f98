package worthsaving.ranking;

import java.util.ArrayList;
import java.util.Currency;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import worthsaving.intake.LotEntry;
import worthsaving.market.Comparable;
import worthsaving.market.PriceKind;
import worthsaving.quantity.Money;
import worthsaving.vehicle.Listing;

/**
 * Rows of a table of listings taken as the user's own comparables: running cars seen for sale or known sold.
 *
 * @param faults one for each row left out, with row, column and mend
 */
public record OwnComparables(List<Comparable> good, List<String> faults) {

    private static final Set<String> ASKED = Set.of("", "asked", "asking", "ask", "listed", "advertised");
    private static final Set<String> SOLD = Set.of("sold", "sale", "paid", "bought");

    public OwnComparables {
        good = List.copyOf(good);
        faults = List.copyOf(faults);
    }

    /** @param currency of the market whose level they are to tell */
    public static OwnComparables of(List<LotEntry> entries, Currency currency) {
        List<Comparable> good = new ArrayList<>();
        List<String> faults = new ArrayList<>();
        for (LotEntry entry : entries) {
            Listing listing = entry.listing();
            Optional<Money> price = listing.ask().get();
            String kind = entry.priceKind().toLowerCase(Locale.ROOT);
            if (price.isEmpty()) {
                faults.add(listing.origin() + ", column price: there is none; a comparable needs what was asked or paid");
            } else if (!price.get().currency().equals(currency)) {
                faults.add(listing.origin() + ", column price: is in " + price.get().currency() + ", the price model in "
                        + currency + "; convert it, or use the model of its market");
            } else if (!ASKED.contains(kind) && !SOLD.contains(kind)) {
                faults.add(listing.origin() + ", column price_kind: '" + kind + "' is neither asked nor sold; write one of "
                        + "the two");
            } else {
                good.add(new Comparable(listing.vehicle(), price.get(),
                        SOLD.contains(kind) ? PriceKind.SALE : PriceKind.ASKING, listing.seen(), listing.origin()));
            }
        }
        return new OwnComparables(good, faults);
    }
}
