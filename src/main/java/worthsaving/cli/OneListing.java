package worthsaving.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.time.LocalDate;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import worthsaving.catalog.Catalogue;
import worthsaving.quantity.Seed;
import worthsaving.ranking.JudgeSettings;
import worthsaving.vehicle.Listing;

/** One listing of a table, by its id. */
final class OneListing {

    private static final int MOST = 1_000_000;

    @Mixin
    private JudgingInput input;

    @Option(names = "--id", paramLabel = "ID", description = "Which listing (default: the first).")
    private String id;

    JudgingInput.Opened open(PrintWriter err) throws IOException {
        return input.open(MOST, err);
    }

    /** @throws UserError when there is no such listing */
    Listing in(JudgingInput.Opened opened) {
        return opened.lot().one(id, input.file());
    }

    LocalDate today() {
        return input.today();
    }

    JudgeSettings settings(Catalogue catalogue, Seed seed) {
        return input.settings(catalogue, seed);
    }
}
