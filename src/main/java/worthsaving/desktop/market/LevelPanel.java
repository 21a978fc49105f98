package worthsaving.desktop.market;

import java.util.OptionalDouble;
import javafx.scene.control.Label;
import javafx.scene.layout.VBox;
import worthsaving.desktop.CarNames;
import worthsaving.desktop.Figures;
import worthsaving.desktop.Texts;
import worthsaving.desktop.Words;
import worthsaving.valuation.MarketLevel;

/** By how much and why the user's comparables move the level of prices: before, what they say, and together. */
final class LevelPanel extends VBox {

    private static final double LEAST_REACH = 0.25;

    LevelPanel() {
        super(6);
        setId("market-level");
        getStyleClass().addAll("panel", "padded", "side-column");
    }

    /** @param car null while none is looked at */
    void show(CarMarket car) {
        getChildren().setAll(Words.plain(Texts.of("market.level"), "subheading"));
        if (car == null) {
            getChildren().add(Words.wrapped(Texts.of("market.car.none"), "soft"));
            return;
        }
        MarketLevel level = car.level();
        getChildren().add(Words.wrapped(Texts.of("market.level.for", CarNames.title(car.listing().vehicle())), "soft"));
        OptionalDouble data = level.dataShift();
        double spread = level.dataSpread().orElse(0);
        double reach = Math.max(LEAST_REACH, Math.max(2 * level.prior(), Math.abs(data.orElse(0)) + spread));
        part("prior", 0, level.prior(), reach);
        if (data.isEmpty()) {
            getChildren().add(Words.wrapped(Texts.of("market.level.nothing")));
            return;
        }
        part("data", data.getAsDouble(), spread, reach);
        getChildren().add(Words.wrapped(Texts.of("market.level.evidence", level.rows().size(),
                Figures.number(level.evidence(), 1)), "soft"));
        part("posterior", level.shift(), level.spread(), reach);
        Label money = Words.wrapped(Texts.of("market.level.money", Figures.money(car.before().mean()),
                Figures.money(car.value().mean()), signed(car.moved().amount(), 0)));
        money.setId("market-level-money");
        getChildren().addAll(money, Words.wrapped(Texts.of("market.level.why"), "soft"));
    }

    private void part(String name, double shift, double spread, double reach) {
        Label figure = Words.wrapped(Texts.of("market.level." + name, signed(100 * Math.expm1(shift), 1),
                Figures.number(100 * spread, 1)));
        figure.setId("market-level-" + name);
        SpanBar bar = new SpanBar(shift - spread, shift, shift + spread, reach);
        bar.setPrefHeight(14);
        getChildren().addAll(figure, bar);
    }

    private static String signed(double value, int decimals) {
        String text = Figures.number(value, decimals);
        return value > 0 ? "+" + text : text;
    }
}
