package worthsaving.intake.advert;

import java.util.List;
import java.util.Optional;
import worthsaving.quantity.Money;
import worthsaving.vehicle.TitleBrand;

/**
 * Price, papers and place.
 *
 * @param negotiable true only where the advert says so
 * @param otherMoney figures that are not the price, such as a repair quote
 * @param title {@code UNKNOWN} where nothing is said; unknown is not clean
 */
public record OfferReading(
        Optional<Found<Money>> price,
        Found<Boolean> negotiable,
        List<Found<Figure>> otherMoney,
        Found<TitleBrand> title,
        Optional<Found<String>> location) {

    /** What a figure is. */
    public enum Role { ASK, WAS, QUOTE, VALUE, SPENT, OTHER }

    /** A sum of money and what it seems to be. */
    public record Figure(Role role, Money money) {}

    public OfferReading {
        otherMoney = List.copyOf(otherMoney);
    }
}
