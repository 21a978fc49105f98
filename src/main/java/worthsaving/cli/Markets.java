package worthsaving.cli;

import java.io.IOException;
import java.io.Reader;
import java.io.UncheckedIOException;
import java.util.List;
import java.util.stream.Collectors;
import worthsaving.market.Market;

/** The table of markets as it lies on the disk. */
final class Markets {

    static final String FILE = "shared/market/markets.csv";

    private Markets() {}

    /** @throws UserError when the table has faults */
    static List<Market> all(Resources resources) {
        try (Reader in = resources.reader(FILE)) {
            return Market.read(in);
        } catch (IllegalArgumentException e) {
            throw new UserError(ExitCode.INSTALLATION_FAULTY, e.getMessage());
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** @throws UserError when there is no such market */
    static Market named(Resources resources, String code) {
        List<Market> all = all(resources);
        return Market.named(all, code).orElseThrow(() -> new UserError(ExitCode.INSTALLATION_FAULTY,
                "There is no market '" + code + "' in " + FILE + "; it has "
                        + all.stream().map(Market::code).collect(Collectors.joining(", ")) + "; add a line for it"));
    }
}
