package worthsaving.desktop.market;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import worthsaving.desktop.Ground;
import worthsaving.desktop.HomeMarket;
import worthsaving.market.MarketSettings;
import worthsaving.shell.MarketGround;
import worthsaving.valuation.PriceModel;

/** Puts a market and the user's changes of it together, in the background. */
final class MarketWork {

    private final MarketShelf shelf;
    private final Map<String, MarketGround> read = new HashMap<>();

    MarketWork(MarketShelf shelf) {
        this.shelf = shelf;
    }

    /**
     * What is asked for.
     *
     * @param like ground that gives the catalogue, the words and the day
     * @param tell whether lot and car are to be judged by it
     */
    record Ask(String code, MarketEdits edits, Ground like, boolean tell) {}

    /**
     * A market as it is used.
     *
     * @param shipped as the project has it
     * @param used with the user's changes
     * @param ground for every screen
     */
    record Composed(MarketGround shipped, MarketEdits edits, MarketGround used, OwnCars own, Ground ground) {

        MarketSettings settings() {
            return used.valuer().settings();
        }

        PriceModel model() {
            return used.valuer().model();
        }
    }

    synchronized Composed of(Ask ask) {
        MarketGround shipped = read.computeIfAbsent(ask.code(), shelf::read);
        MarketGround moved = shipped.with(ask.edits().on(shipped.valuer().settings(), List.of()));
        Ground plain = ground(moved, ask.like());
        OwnCars own = OwnCars.of(ask.edits().tables(), plain);
        MarketGround used = own.rows().isEmpty()
                ? moved : moved.with(moved.valuer().settings().withComparables(own.comparables()));
        return new Composed(shipped, ask.edits(), used, own, own.rows().isEmpty() ? plain : ground(used, ask.like()));
    }

    private static Ground ground(MarketGround market, Ground like) {
        PriceModel model = market.valuer().model();
        return like.on(HomeMarket.of(market, like.home().asWritten()), market.valuer()::forecast, model.makes(), model::models);
    }
}
