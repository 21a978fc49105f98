package worthsaving.desktop.market;

import java.util.List;
import worthsaving.market.Market;
import worthsaving.shell.MarketGround;

/** Where the markets' price models and settings stand. */
public interface MarketShelf {

    /** Those that have a price model. */
    List<Market> markets();

    /**
     * Reads model and settings of one; takes a moment.
     *
     * @throws worthsaving.shell.FaultyInstallation when they cannot be used
     */
    MarketGround read(String code);
}
