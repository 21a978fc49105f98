package worthsaving.desktop.market;

import java.util.List;
import worthsaving.quantity.Money;
import worthsaving.shell.MarketGround;
import worthsaving.valuation.AlikeCar;
import worthsaving.valuation.MarketLevel;
import worthsaving.valuation.ValueForecast;
import worthsaving.valuation.Valuer;
import worthsaving.vehicle.Listing;

/**
 * What the market says of one car.
 *
 * @param value once repaired
 * @param before the same had the user entered no comparables
 * @param level where the market stands for this car, by the user's comparables
 * @param alike the user's comparables most like it
 */
record CarMarket(Listing listing, ValueForecast value, ValueForecast before, MarketLevel level, List<AlikeCar> alike) {

    private static final int MOST_ALIKE = 10;

    CarMarket {
        alike = List.copyOf(alike);
    }

    static CarMarket of(MarketGround market, Listing listing) {
        Valuer valuer = market.valuer();
        Valuer without = valuer.with(valuer.settings().withComparables(List.of()));
        return new CarMarket(listing,
                valuer.forecast(listing.vehicle(), listing.seen()),
                without.forecastWithoutReasons(listing.vehicle(), listing.seen()),
                valuer.marketLevel(listing.vehicle(), listing.seen()),
                valuer.alike(listing.vehicle(), listing.seen(), List.of(), MOST_ALIKE));
    }

    /** By how much the comparables move what the car is worth. */
    Money moved() {
        return new Money(value.mean().amount() - before.mean().amount(), value.currency());
    }
}
