package worthsaving.shell;

import java.io.IOException;
import java.io.Reader;
import java.io.UncheckedIOException;
import java.util.List;
import java.util.stream.Collectors;
import worthsaving.market.Market;

/** The project's table of markets. */
public final class Markets {

    static final String FILE = "shared/market/markets.csv";

    private Markets() {}

    /** @throws FaultyInstallation when the table has faults */
    public static List<Market> all(ProjectFiles files) {
        try (Reader in = files.reader(FILE)) {
            return Market.read(in);
        } catch (IllegalArgumentException e) {
            throw new FaultyInstallation(e.getMessage());
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** @throws FaultyInstallation when there is no such market */
    public static Market named(ProjectFiles files, String code) {
        List<Market> all = all(files);
        return Market.named(all, code).orElseThrow(() -> new FaultyInstallation(
                "There is no market '" + code + "' in " + FILE + "; it has "
                        + all.stream().map(Market::code).collect(Collectors.joining(", ")) + "; add a line for it"));
    }
}
