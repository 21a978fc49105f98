package worthsaving.cli;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.Reader;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import worthsaving.intake.advert.CarNames;
import worthsaving.market.CellStyle;
import worthsaving.market.Cleaning;
import worthsaving.market.CleaningRule;
import worthsaving.market.DatasetShape;
import worthsaving.market.MatchWishes;
import worthsaving.market.MatchedTable;
import worthsaving.market.PriceTable;
import worthsaving.market.PriceTableReader;
import worthsaving.market.TableMatcher;
import worthsaving.shell.Markets;

/** Tables of used-car prices as they lie on the disk, with the shape they are read by. */
final class PriceData {

    private static final String FOLDER = "shared/market/";
    private static final int BAD_ROWS_TOLD = 20;

    private final Path data;
    private final DatasetShape shape;
    private final CellStyle style;
    private final List<CleaningRule> rules;

    private PriceData(Path data, DatasetShape shape, CellStyle style, List<CleaningRule> rules) {
        this.data = data;
        this.shape = shape;
        this.style = style;
        this.rules = rules;
    }

    /**
     * @param shape name of a shape of the project, or a file; null to match the columns
     * @throws UserError when there is no such table or shape, or it has faults
     */
    static PriceData of(Resources resources, Path data, String shape, MatchOptions options, PrintWriter err)
            throws IOException {
        mustBeThere(data);
        return shape == null ? matched(resources, data, options.wishes(data), err) : shaped(resources, data, shape);
    }

    /** As {@link #of} without options. */
    static PriceData of(Resources resources, Path data, String shape, PrintWriter err) throws IOException {
        return of(resources, data, shape, new MatchOptions(), err);
    }

    private static PriceData shaped(Resources resources, Path data, String name) throws IOException {
        Path own = Path.of(name);
        Path file = Files.isRegularFile(own) ? own : resources.path(FOLDER + name + ".properties");
        if (!Files.isRegularFile(file)) {
            throw new UserError(ExitCode.USAGE, "There is no shape '" + name + "' in " + FOLDER
                    + " and no file of that name; copy one of those and name its columns, or leave the shape out to have the "
                    + "columns matched");
        }
        try (Reader text = Resources.reader(file)) {
            return new PriceData(
                    data, DatasetShape.read(text, file.getFileName().toString()), CellStyle.PLAIN, rules(resources));
        } catch (IllegalArgumentException e) {
            throw new UserError(ExitCode.USAGE, e.getMessage());
        }
    }

    private static PriceData matched(Resources resources, Path data, MatchWishes wishes, PrintWriter err)
            throws IOException {
        CarNames cars = CarNames.read(name -> resources.reader("shared/vocabulary/" + name));
        try (Reader names = resources.reader(FOLDER + "column_names.csv");
                Reader words = resources.reader(FOLDER + "word_names.csv");
                Reader table = open(data)) {
            MatchedTable matched = new TableMatcher(Markets.all(resources::reader), names, words, cars.makes(), cars.models())
                    .match(table, wishes);
            err.println(data.getFileName() + " is read as follows; --column, --currency, --units and --kind overrule it:");
            matched.lines().forEach(err::println);
            return new PriceData(data, matched.shape(), matched.style(), rules(resources));
        } catch (CharacterCodingException e) {
            throw notText(data);
        } catch (IllegalArgumentException e) {
            throw new UserError(ExitCode.FILE_UNUSABLE, data + " cannot be used as it is:\n  " + e.getMessage());
        }
    }

    private static List<CleaningRule> rules(Resources resources) throws IOException {
        try (Reader cleaning = resources.reader(FOLDER + "cleaning.csv")) {
            return CleaningRule.read(cleaning, "cleaning.csv");
        }
    }

    DatasetShape shape() {
        return shape;
    }

    /**
     * Reads and cleans, telling of rows that cannot be read.
     *
     * @throws UserError when the table cannot be read by this shape
     */
    Cleaning clean(PrintWriter err) throws IOException {
        try (Reader in = open(data)) {
            PriceTable table = PriceTableReader.read(in, shape, style);
            table.badRows().stream().limit(BAD_ROWS_TOLD).forEach(bad -> err.println(data.getFileName() + ": " + bad));
            if (table.badCount() > BAD_ROWS_TOLD) {
                err.println(data.getFileName() + ": " + (table.badCount() - BAD_ROWS_TOLD) + " more rows cannot be read");
            }
            return Cleaning.clean(table, rules);
        } catch (CharacterCodingException e) {
            throw notText(data);
        } catch (IllegalArgumentException e) {
            throw new UserError(ExitCode.FILE_UNUSABLE, data + ": " + e.getMessage());
        }
    }

    private static UserError notText(Path data) {
        return new UserError(ExitCode.FILE_UNUSABLE, data + " is not UTF-8 text; save it as UTF-8");
    }

    private static void mustBeThere(Path data) {
        if (!Files.isRegularFile(data)) {
            throw new UserError(ExitCode.FILE_UNUSABLE, "There is no file " + data);
        }
    }

    /** The text without the mark that some programs put before it. */
    private static Reader open(Path data) throws IOException {
        BufferedReader reader = Files.newBufferedReader(data, StandardCharsets.UTF_8);
        reader.mark(1);
        if (reader.read() != '\ufeff') {
            reader.reset();
        }
        return reader;
    }
}
