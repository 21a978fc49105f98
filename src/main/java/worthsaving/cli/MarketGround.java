package worthsaving.cli;

import java.util.Currency;
import java.util.Locale;
import worthsaving.catalog.Catalogue;
import worthsaving.market.Market;
import worthsaving.market.MarketFactor;
import worthsaving.market.MarketSettings;
import worthsaving.valuation.Valuer;

/** The market that cars are judged on: its price model and settings, and what the catalogue's money is worth there. */
record MarketGround(Market market, Valuer valuer) {

    /** @throws UserError when model and market have different currencies */
    MarketGround {
        Currency model = valuer.model().currency();
        if (!model.equals(market.currency())) {
            throw new UserError(ExitCode.INSTALLATION_FAULTY, "The price model " + valuer.model().card().name() + " is in "
                    + model + ", its market " + market.code() + " in " + market.currency() + "; mend " + Markets.FILE
                    + " or fit the model for another market");
        }
    }

    MarketGround with(Valuer other) {
        return new MarketGround(market, other);
    }

    /** @param factor in place of the market's own, null to keep that */
    MarketGround withCatalogueMoney(Double factor) {
        if (factor == null) {
            return this;
        }
        if (!(factor > 0) || Double.isInfinite(factor)) {
            throw new UserError(ExitCode.USAGE, "--catalogue-money must be above zero, not " + factor);
        }
        return with(valuer.with(valuer.settings().with(MarketSettings.CATALOGUE_MONEY, factor)));
    }

    /**
     * The catalogue with its money in the market's currency.
     *
     * @throws UserError when nothing says what its money is worth there
     */
    Catalogue in(Catalogue catalogue) {
        return catalogue.currency().equals(market.currency())
                ? catalogue
                : catalogue.in(market.currency(), factor(catalogue.currency()).value());
    }

    private MarketFactor factor(Currency of) {
        try {
            return valuer.settings().factor(MarketSettings.CATALOGUE_MONEY);
        } catch (IllegalArgumentException e) {
            throw new UserError(ExitCode.INSTALLATION_FAULTY, "Nothing says what the catalogue's figures in " + of
                    + " are worth in " + market.currency() + "; give --catalogue-money, or a line '" + market.code() + ","
                    + MarketSettings.CATALOGUE_MONEY + ",...' in shared/market/market_settings.csv");
        }
    }

    /** What people must know of currency and units, in one line. */
    String note(Catalogue asWritten) {
        String about = "Market " + market.code() + " (" + market.name() + "): money in " + market.currency()
                + ", odometers in " + market.unit() + ", prices by " + valuer.model().card().name() + ".";
        if (asWritten.currency().equals(market.currency())) {
            return about;
        }
        MarketFactor factor = factor(asWritten.currency());
        return about + String.format(Locale.ROOT,
                " The catalogue's costs are in %s and taken times %.2f (%s). Taxes and fees are "
                        + "its US ones but for what --place sets.",
                asWritten.currency(), factor.value(), factor.why());
    }
}
