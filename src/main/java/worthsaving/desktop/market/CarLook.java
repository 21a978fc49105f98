package worthsaving.desktop.market;

import java.util.Optional;
import java.util.concurrent.Executor;
import java.util.function.Consumer;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import worthsaving.desktop.LatestWins;
import worthsaving.desktop.ScreenThread;
import worthsaving.desktop.Texts;
import worthsaving.desktop.market.MarketWork.Composed;
import worthsaving.vehicle.Listing;

/** What the market means for one car, reckoned in the background whenever either changes. */
final class CarLook {

    private final LatestWins<Ask, CarMarket> looking;
    private final Consumer<String> onTrouble;
    private final ReadOnlyObjectWrapper<CarMarket> seen = new ReadOnlyObjectWrapper<>();
    private Optional<Composed> market = Optional.empty();
    private Optional<Listing> listing = Optional.empty();

    private record Ask(Composed market, Listing listing) {}

    CarLook(Consumer<String> onTrouble, Executor background, ScreenThread screen) {
        this.onTrouble = onTrouble;
        this.looking = new LatestWins<>((ask, cancelled, progress) -> CarMarket.of(ask.market().used(), ask.listing()),
                (running, newer) -> false, new Arrival(), background, screen);
    }

    void on(Composed other) {
        market = Optional.of(other);
        reckon();
    }

    void look(Optional<Listing> other) {
        listing = other;
        reckon();
    }

    private void reckon() {
        if (market.isPresent() && listing.isPresent()) {
            looking.submit(new Ask(market.get(), listing.get()));
        } else {
            seen.set(null);
        }
    }

    ReadOnlyObjectProperty<CarMarket> seenProperty() {
        return seen.getReadOnlyProperty();
    }

    private final class Arrival implements LatestWins.Listener<Ask, CarMarket> {

        @Override
        public void done(Ask ask, CarMarket output, boolean latest) {
            if (latest) {
                seen.set(output);
            }
        }

        @Override
        public void failed(Ask ask, RuntimeException why) {
            seen.set(null);
            onTrouble.accept(Texts.of("failed", why.getMessage()));
        }
    }
}
