package worthsaving.cli;

import java.io.IOException;
import java.io.Reader;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import worthsaving.shell.MarketGround;

/** Price models and market settings as they lie on the disk. */
final class PriceModels {

    private PriceModels() {}

    /**
     * @param given file, or name of a model of the project such as us
     * @throws UserError when the file is missing or is no model this program can read
     */
    static MarketGround load(Resources resources, String given) {
        Path file = file(resources, given);
        try (Reader in = Resources.reader(file)) {
            return MarketGround.read(resources::reader, in, file.getFileName().toString());
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
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
