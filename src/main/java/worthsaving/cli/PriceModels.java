package worthsaving.cli;

import java.io.IOException;
import java.io.Reader;
import java.io.StringReader;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.nio.charset.MalformedInputException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import worthsaving.market.Market;
import worthsaving.market.MarketSettings;
import worthsaving.valuation.ModelFormatException;
import worthsaving.valuation.PriceModel;
import worthsaving.valuation.Valuer;

/** Price models and market settings as they lie on the disk. */
final class PriceModels {

    private static final String FACTORS = "shared/market/market_settings.csv";
    private static final String INDEX = "shared/market/price_index.csv";

    private PriceModels() {}

    /**
     * @param given file, or name of a model of the project such as us
     * @throws UserError when the file is missing or is no model this program can read
     */
    static MarketGround load(Resources resources, String given) {
        Path file = file(resources, given);
        try (Reader in = Resources.reader(file)) {
            PriceModel model = PriceModel.read(in, file.getFileName().toString());
            Market market = Markets.named(resources, model.market());
            return new MarketGround(market, new Valuer(model, settings(resources, model.market()), market.odometer()));
        } catch (MalformedInputException e) {
            throw new UserError(ExitCode.INSTALLATION_FAULTY, file.getFileName() + " is no price model: it is not UTF-8 text. "
                    + "Fit the model again or take a good copy.");
        } catch (ModelFormatException | IllegalArgumentException e) {
            throw new UserError(ExitCode.INSTALLATION_FAULTY, e.getMessage());
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static MarketSettings settings(Resources resources, String market) {
        try {
            return MarketSettings.read(text(resources, FACTORS), text(resources, INDEX), market);
        } catch (IOException | IllegalArgumentException e) {
            throw new UserError(ExitCode.INSTALLATION_FAULTY, e.getMessage() + " (" + FACTORS + " or " + INDEX
                    + "). Restore them from a good copy.");
        }
    }

    private static Reader text(Resources resources, String file) {
        StringWriter whole = new StringWriter();
        try (Reader in = resources.reader(file)) {
            in.transferTo(whole);
        } catch (IOException | UncheckedIOException e) {
            throw new UserError(ExitCode.INSTALLATION_FAULTY, file + " is missing, cannot be read or is not UTF-8 text. "
                    + "Restore it from a good copy.");
        }
        return new StringReader(whole.toString());
    }

    /** A file, or the name of one of the models of the project. */
    private static Path file(Resources resources, String given) {
        Path own = Path.of(given);
        if (Files.isRegularFile(own)) {
            return own;
        }
        Path shipped = resources.path("models/" + given.toLowerCase(Locale.ROOT) + ".json");
        if (given.matches("[A-Za-z0-9_-]+") && Files.isRegularFile(shipped)) {
            return shipped;
        }
        throw new UserError(ExitCode.INSTALLATION_FAULTY, "There is no price model " + given + ", neither as a file nor as "
                + "models/" + given + ".json; fit one with: worthsaving fit");
    }
}
