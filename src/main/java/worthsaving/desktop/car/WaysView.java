package worthsaving.desktop.car;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import javafx.geometry.HPos;
import javafx.scene.control.Label;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.VBox;
import worthsaving.deal.Assessment;
import worthsaving.deal.WayOut;
import worthsaving.deal.WayResult;
import worthsaving.desktop.Figures;
import worthsaving.desktop.Texts;
import worthsaving.desktop.Words;
import worthsaving.quantity.Money;

/** Every way out side by side, at the same price. */
final class WaysView extends VBox {

    private static final List<Line> LINES = List.of(
            new Line("profit", w -> Figures.amount(w.expectedProfit())),
            new Line("loss", w -> Figures.percent(w.chanceOfLoss())),
            new Line("bad", w -> Figures.amount(w.meanOfWorstTwentieth())),
            new Line("low", w -> Figures.amount(w.profit().quantile(0.1))),
            new Line("high", w -> Figures.amount(w.profit().quantile(0.9))),
            new Line("cash", w -> Figures.amount(w.cashOut().mean())),
            new Line("hours", w -> Figures.hours(w.ownHours().value())),
            new Line("per_hour", w -> w.profitPerHour().isPresent()
                    ? Figures.amount(w.profitPerHour().getAsDouble()) : Texts.of("none")),
            new Line("days", w -> Figures.days(w.days().mean())),
            new Line("most", w -> w.wholeLimit().map(m -> Figures.amount(m.amount())).orElse(Texts.of("none"))));

    private record Line(String key, Function<WayResult, String> text) {}

    WaysView() {
        super(10);
        getStyleClass().add("tab-page");
        setId("ways");
    }

    void show(CarPicture.Seen seen) {
        Assessment a = seen.appraisal().assessment();
        GridPane grid = new GridPane();
        grid.getStyleClass().add("table-of-ways");
        List<WayOut> ways = List.of(WayOut.values());
        for (int i = 0; i < ways.size(); i++) {
            boolean best = ways.get(i) == a.best();
            Label head = Words.whole(Texts.of(best ? "ways.best" : "ways.other", ways.get(i).label()), "subheading");
            cell(grid, head, i + 1, 0, best);
        }
        for (int row = 0; row < LINES.size(); row++) {
            Line line = LINES.get(row);
            Label head = Words.explained(Words.whole(Texts.of("ways." + line.key()), "head-of-ways"),
                    Texts.of("ways.explain." + line.key()));
            grid.add(head, 0, row + 1);
            for (int i = 0; i < ways.size(); i++) {
                WayOut way = ways.get(i);
                Label text = Words.whole(way == WayOut.WALK_AWAY ? Texts.of("none") : line.text().apply(a.way(way)));
                text.setId("way-" + way.name() + "-" + line.key());
                cell(grid, text, i + 1, row + 1, way == a.best());
            }
        }
        getChildren().setAll(
                Words.wrapped(Texts.of("ways.title", Figures.money(a.price())), "subheading"), grid,
                Words.wrapped(Texts.of("ways.stop", Figures.percent(a.chanceOfStopping()))),
                Words.wrapped(Texts.of("ways.knowing", Figures.money(a.valueOfKnowing()))));
        Optional.of(a.chanceUnmendable()).filter(p -> p > 0.005).ifPresent(p ->
                getChildren().add(Words.wrapped(Texts.of("ways.unmendable", Figures.percent(p)))));
        Optional<Money> even = a.mostToPay().breakEven();
        even.ifPresent(m -> getChildren().add(Words.wrapped(Texts.of("ways.even", Figures.money(m)))));
    }

    private static void cell(GridPane grid, Label label, int column, int row, boolean best) {
        label.getStyleClass().add("cell-of-ways");
        if (best) {
            label.getStyleClass().add("best-way");
        }
        label.setMaxWidth(Double.MAX_VALUE);
        GridPane.setHalignment(label, HPos.RIGHT);
        grid.add(label, column, row);
    }
}
