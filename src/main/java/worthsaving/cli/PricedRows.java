package worthsaving.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import picocli.CommandLine.Option;
import worthsaving.market.DatasetShape;
import worthsaving.market.PriceTable;
import worthsaving.report.ValueBackground;
import worthsaving.shell.MarketGround;
import worthsaving.valuation.Valuer;
import worthsaving.vehicle.Listing;

/** Where the priced cars shown beside a value come from. */
final class PricedRows {

    private static final int SHOWN = 5;
    private static final String SHIPPED = "us_cars_2005";
    private static final String NO_ROWS = "The price model carries no rows of its data, since their source does not say that "
            + "they may be passed on: it holds fitted figures only. ";

    @Option(names = "--prices", paramLabel = "FILE",
            description = "Table of used-car prices to show the rows most like this car from; its columns are matched.")
    private Path prices;

    @Option(names = "--prices-shape", paramLabel = "SHAPE", description = "How to read --prices, as for fit.")
    private String shape;

    /** @throws UserError when the table cannot be used, or is of another market */
    ValueBackground beside(Listing listing, MarketGround ground, PrintWriter err) throws IOException {
        Valuer valuer = ground.valuer();
        List<PriceTable> tables = new ArrayList<>();
        Resources resources = Resources.find();
        if (prices != null) {
            tables.add(ofMarket(ground, PriceData.of(resources, prices, shape, err).clean(err).table()));
        }
        Path shipped = resources.path("datasets/" + SHIPPED + ".csv");
        PriceData shippedData = PriceData.of(resources, shipped, SHIPPED, err);
        if (shippedData.shape().market().equals(ground.market().code())) {
            tables.add(shippedData.clean(err).table());
        }
        return new ValueBackground(
                valuer.typical(),
                valuer.level(listing.vehicle(), listing.seen()),
                valuer.alike(listing.vehicle(), listing.seen(), tables, SHOWN),
                NO_ROWS + (prices == null ? "Give your own with --comparables FILE, or a table of prices with --prices FILE."
                        : prices.getFileName() + " has none like it either."));
    }

    private PriceTable ofMarket(MarketGround ground, PriceTable table) {
        DatasetShape read = table.shape();
        if (!read.market().equals(ground.market().code()) || !read.currency().equals(ground.market().currency())) {
            throw new UserError(ExitCode.USAGE, prices + " is of market " + read.market() + " in " + read.currency()
                    + ", the price model of " + ground.market().code() + " in " + ground.market().currency()
                    + "; give a table of the same market, or another --model");
        }
        return table;
    }
}
