package worthsaving.cli;

import java.io.IOException;
import java.io.Reader;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import worthsaving.market.Cleaning;
import worthsaving.market.CleaningRule;
import worthsaving.market.DatasetShape;
import worthsaving.market.PriceTableReader;

/** Tables of used-car prices as they lie on the disk, with the shape they are read by. */
final class PriceData {

    private static final String FOLDER = "shared/market/";

    private final DatasetShape shape;
    private final List<CleaningRule> rules;

    private PriceData(DatasetShape shape, List<CleaningRule> rules) {
        this.shape = shape;
        this.rules = rules;
    }

    /**
     * @param name of a shape of the project, or a file
     * @throws UserError when there is no such shape or it has faults
     */
    static PriceData of(Resources resources, String name) throws IOException {
        Path own = Path.of(name);
        Path file = Files.isRegularFile(own) ? own : resources.path(FOLDER + name + ".properties");
        if (!Files.isRegularFile(file)) {
            throw new UserError(ExitCode.USAGE, "There is no shape '" + name + "' in " + FOLDER
                    + " and no file of that name; copy one of those and name its columns");
        }
        try (Reader text = Resources.reader(file); Reader cleaning = resources.reader(FOLDER + "cleaning.csv")) {
            return new PriceData(DatasetShape.read(text, file.getFileName().toString()),
                    CleaningRule.read(cleaning, "cleaning.csv"));
        } catch (IllegalArgumentException e) {
            throw new UserError(ExitCode.USAGE, e.getMessage());
        }
    }

    /** @throws UserError when the table cannot be read by this shape */
    Cleaning clean(Path data) throws IOException {
        if (!Files.isRegularFile(data)) {
            throw new UserError(ExitCode.FILE_UNUSABLE, "There is no file " + data);
        }
        try (Reader in = Files.newBufferedReader(data, StandardCharsets.UTF_8)) {
            return Cleaning.clean(PriceTableReader.read(in, shape), rules);
        } catch (CharacterCodingException e) {
            throw new UserError(ExitCode.FILE_UNUSABLE, data + " is not UTF-8 text; save it as UTF-8");
        } catch (IllegalArgumentException e) {
            throw new UserError(ExitCode.FILE_UNUSABLE, data + ": " + e.getMessage());
        }
    }
}
