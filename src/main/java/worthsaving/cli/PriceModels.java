package worthsaving.cli;

import java.io.IOException;
import java.io.Reader;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import worthsaving.market.MarketSettings;
import worthsaving.valuation.ModelFormatException;
import worthsaving.valuation.PriceModel;
import worthsaving.valuation.Valuer;

/** Price models and market settings as they lie on the disk. */
final class PriceModels {

    private static final String FACTORS = "shared/market/market_settings.csv";
    private static final String INDEX = "shared/market/price_index.csv";

    private PriceModels() {}

    /** @throws UserError when the file is missing or is no model this program can read */
    static Valuer load(Resources resources, Path given, String market) {
        Path file = given != null ? given : resources.path("models/" + market.toLowerCase(Locale.ROOT) + ".json");
        if (!Files.isRegularFile(file)) {
            throw new UserError(ExitCode.INSTALLATION_FAULTY, "There is no price model " + file
                    + "; fit one with: worthsaving fit");
        }
        try (Reader in = Resources.reader(file)) {
            PriceModel model = PriceModel.read(in, file.getFileName().toString());
            try (Reader factors = resources.reader(FACTORS); Reader index = resources.reader(INDEX)) {
                return new Valuer(model, MarketSettings.read(factors, index, model.market()));
            }
        } catch (ModelFormatException | IllegalArgumentException e) {
            throw new UserError(ExitCode.INSTALLATION_FAULTY, e.getMessage());
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
