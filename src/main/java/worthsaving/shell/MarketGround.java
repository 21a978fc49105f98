package worthsaving.shell;

import java.io.IOException;
import java.io.Reader;
import java.io.StringReader;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.nio.charset.MalformedInputException;
import java.util.Currency;
import java.util.Locale;
import worthsaving.catalog.Catalogue;
import worthsaving.market.Market;
import worthsaving.market.MarketFactor;
import worthsaving.market.MarketSettings;
import worthsaving.market.MarketWords;
import worthsaving.valuation.ModelFormatException;
import worthsaving.valuation.PriceModel;
import worthsaving.valuation.Valuer;

/** The market that cars are judged on: its price model and settings, and what the catalogue's money is worth there. */
public record MarketGround(Market market, Valuer valuer) {

    private static final String FACTORS = "shared/market/market_settings.csv";
    private static final String INDEX = "shared/market/price_index.csv";
    private static final String WORDS = "shared/market/market_words.csv";

    /** @throws FaultyInstallation when model and market have different currencies */
    public MarketGround {
        Currency model = valuer.model().currency();
        if (!model.equals(market.currency())) {
            throw new FaultyInstallation("The price model " + valuer.model().card().name() + " is in "
                    + model + ", its market " + market.code() + " in " + market.currency() + "; mend " + Markets.FILE
                    + " or fit the model for another market");
        }
    }

    /**
     * Reads a price model, and settings and words of the market that it belongs to.
     *
     * @param name of the model's file, for messages
     * @throws FaultyInstallation when one of them cannot be used
     */
    public static MarketGround read(ProjectFiles files, Reader model, String name) {
        PriceModel prices = model(model, name);
        Market market = Markets.named(files, prices.market());
        try {
            MarketSettings settings = MarketSettings.read(text(files, FACTORS), text(files, INDEX), market.code());
            return new MarketGround(market, new Valuer(prices, settings, market.odometer(),
                    MarketWords.read(text(files, WORDS), market.code())));
        } catch (IOException | IllegalArgumentException e) {
            throw new FaultyInstallation(e.getMessage() + " (" + FACTORS + ", " + INDEX + " or " + WORDS
                    + "). Restore them from a good copy.");
        }
    }

    private static PriceModel model(Reader model, String name) {
        try {
            return PriceModel.read(model, name);
        } catch (MalformedInputException e) {
            throw new FaultyInstallation(name + " is no price model: it is not UTF-8 text. "
                    + "Fit the model again or take a good copy.");
        } catch (ModelFormatException | IllegalArgumentException e) {
            throw new FaultyInstallation(e.getMessage());
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** Read to the end first, so that a file which cannot be read is the one that is named. */
    private static Reader text(ProjectFiles files, String file) {
        StringWriter whole = new StringWriter();
        try (Reader in = files.reader(file)) {
            in.transferTo(whole);
        } catch (IOException | UncheckedIOException e) {
            throw new FaultyInstallation(file + " is missing, cannot be read or is not UTF-8 text. "
                    + "Restore it from a good copy.");
        }
        return new StringReader(whole.toString());
    }

    public MarketGround with(Valuer other) {
        return new MarketGround(market, other);
    }

    public MarketGround with(MarketSettings settings) {
        return with(valuer.with(settings));
    }

    /**
     * The catalogue with its money in the market's currency.
     *
     * @throws FaultyInstallation when nothing says what its money is worth there
     */
    public Catalogue in(Catalogue catalogue) {
        return catalogue.currency().equals(market.currency())
                ? catalogue : catalogue.in(market.currency(), catalogueMoney(catalogue));
    }

    /**
     * Units of the market's currency for each of the catalogue's.
     *
     * @throws FaultyInstallation when nothing says it
     */
    public double catalogueMoney(Catalogue catalogue) {
        return catalogue.currency().equals(market.currency()) ? 1 : factor(catalogue.currency()).value();
    }

    private MarketFactor factor(Currency of) {
        try {
            return valuer.settings().factor(MarketSettings.CATALOGUE_MONEY);
        } catch (IllegalArgumentException e) {
            throw new FaultyInstallation("Nothing says what the catalogue's figures in " + of
                    + " are worth in " + market.currency() + "; give --catalogue-money, or a line '" + market.code() + ","
                    + MarketSettings.CATALOGUE_MONEY + ",...' in " + FACTORS);
        }
    }

    /** What people must know of currency and units, in one line. */
    public String note(Catalogue asWritten) {
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
