package worthsaving.desktop;

import java.util.Objects;
import worthsaving.catalog.Catalogue;
import worthsaving.market.Market;
import worthsaving.quantity.Distance;
import worthsaving.shell.MarketGround;

/**
 * The market that cars are bought and sold on.
 *
 * @param asWritten the catalogue with its money as its files have it
 * @param catalogueMoney units of the market's currency for each of the catalogue's
 */
public record HomeMarket(Market market, Catalogue asWritten, double catalogueMoney) {

    public HomeMarket {
        Objects.requireNonNull(market, "market");
        Objects.requireNonNull(asWritten, "asWritten");
    }

    /** Miles, and the catalogue's own currency. */
    static HomeMarket of(Catalogue catalogue) {
        return new HomeMarket(
                new Market("US", "United States", catalogue.currency(), Distance.Unit.MILES), catalogue, 1);
    }

    /** @throws worthsaving.shell.FaultyInstallation when nothing says what the catalogue's money is worth there */
    public static HomeMarket of(MarketGround ground, Catalogue asWritten) {
        return new HomeMarket(ground.market(), asWritten, ground.catalogueMoney(asWritten));
    }

    HomeMarket with(Catalogue other) {
        return new HomeMarket(market, other, catalogueMoney);
    }

    /** The catalogue with its money in the market's currency. */
    Catalogue catalogue() {
        return asWritten.currency().equals(market.currency()) ? asWritten : asWritten.in(market.currency(), catalogueMoney);
    }

    Units units() {
        return market.odometer() == Distance.Unit.MILES ? Units.MILES : Units.KILOMETRES;
    }
}
