package worthsaving.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.time.LocalDate;
import worthsaving.catalog.Catalogue;
import worthsaving.ranking.OwnComparables;
import worthsaving.shell.MarketGround;
import worthsaving.valuation.Valuer;

/** A table of cars that the user saw sold or advertised. */
record ComparablesFile(Path file) {

    private static final int MOST = 10_000;

    /**
     * The market with its level told by the good rows; every other row is told on standard error.
     *
     * @throws UserError when it is no table of cars, or no row of it can be used
     */
    MarketGround read(MarketGround ground, Catalogue catalogue, LocalDate today, PrintWriter err) throws IOException {
        ReadLot lot = new ListingSource(file, today).lot(Resources.find(), catalogue, ground, MOST, err);
        OwnComparables own = OwnComparables.of(lot.entries(), ground.market().currency());
        own.faults().forEach(err::println);
        if (own.good().isEmpty()) {
            throw new UserError(ExitCode.FILE_UNUSABLE, file + " holds no comparable that can be used");
        }
        Valuer valuer = ground.valuer();
        err.println(own.good().size() + " comparable(s) of your own from " + file.getFileName());
        return ground.with(valuer.with(valuer.settings().withComparables(own.good())));
    }
}
