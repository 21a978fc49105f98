package worthsaving.intake;

import java.util.List;
import java.util.Objects;
import worthsaving.quantity.Money;
import worthsaving.vehicle.Fact;
import worthsaving.vehicle.Listing;

/**
 * A good row: the listing, and what the table says beside it.
 *
 * @param row line of the file on which it starts
 * @param quote a dealer's price for the repair
 * @param priceKind the word beside the price, such as asked or sold; "" when there is none
 * @param codes trouble codes as read out; those the catalogue knows are findings of the listing as well
 */
public record LotEntry(long row, Listing listing, Fact<Money> quote, String priceKind, List<ReadCode> codes) {

    public LotEntry {
        Objects.requireNonNull(listing, "listing");
        Objects.requireNonNull(quote, "quote");
        Objects.requireNonNull(priceKind, "priceKind");
        codes = List.copyOf(codes);
    }
}
