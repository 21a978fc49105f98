package worthsaving.desktop.teardown;

import java.util.Optional;
import javafx.geometry.HPos;
import javafx.scene.control.Label;
import javafx.scene.layout.ColumnConstraints;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import worthsaving.casebook.CaseFile;
import worthsaving.casebook.Forecast;
import worthsaving.desktop.Figures;
import worthsaving.desktop.Texts;
import worthsaving.desktop.Words;
import worthsaving.quantity.Money;
import worthsaving.record.Ensemble;
import worthsaving.record.Quantity;
import worthsaving.teardown.Advice;

/** What was spent, no longer counted, beside what was forecast before the car was bought. */
final class SpentPane extends VBox {

    SpentPane() {
        super(4);
        getStyleClass().add("padded");
        setId("spent");
    }

    void show(Advice.Spent spent, CaseFile file, Optional<Money> price) {
        Optional<Forecast> forecast = file.forecasts().isEmpty() ? Optional.empty()
                : Optional.of(file.forecasts().get(file.forecasts().size() - 1));
        GridPane grid = new GridPane();
        grid.setHgap(12);
        grid.setVgap(3);
        for (int c = 0; c < 3; c++) {
            ColumnConstraints column = new ColumnConstraints();
            column.setHgrow(c == 0 ? Priority.ALWAYS : Priority.NEVER);
            column.setHalignment(c == 0 ? HPos.LEFT : HPos.RIGHT);
            grid.getColumnConstraints().add(column);
        }
        grid.add(Words.whole(Texts.of("teardown.spent.so_far"), "soft"), 1, 0);
        grid.add(Words.explained(Words.whole(Texts.of("teardown.spent.forecast"), "soft"),
                Texts.of("teardown.spent.forecast.why")), 2, 0);
        int row = 1;
        if (price.isPresent()) {
            grid.addRow(row++, Words.wrapped(Texts.of("teardown.spent.price")),
                    Words.whole(Figures.money(price.get())), Words.whole(""));
        }
        Label receipts = Words.whole(Figures.money(spent.receipts()));
        receipts.setId("spent-receipts");
        Label hours = Words.whole(Figures.hours(spent.hours().value()));
        hours.setId("spent-hours");
        grid.addRow(row++, Words.wrapped(Texts.of("teardown.spent.receipts")), receipts,
                Words.whole(price.isPresent() ? "" : range(forecast, Quantity.COST)));
        if (price.isPresent()) {
            grid.addRow(row++, Words.wrapped(Texts.of("teardown.spent.cash")),
                    Words.whole(Figures.money(price.get().plus(spent.receipts()))),
                    Words.whole(range(forecast, Quantity.COST)));
        }
        grid.addRow(row++, Words.wrapped(Texts.of("teardown.spent.hours")), hours,
                Words.whole(range(forecast, Quantity.HOURS)));
        Label total = Words.whole(Figures.money(spent.total()), "subheading");
        total.setId("spent-total");
        grid.addRow(row, Words.wrapped(Texts.of("teardown.spent.total"), "subheading"), total, Words.whole(""));
        getChildren().setAll(
                Words.explained(Words.plain(Texts.of("teardown.spent"), "subheading"), Texts.of("teardown.spent.why")), grid);
        if (forecast.isEmpty()) {
            getChildren().add(Words.wrapped(Texts.of("teardown.spent.no_forecast"), "soft"));
        }
    }

    private static String range(Optional<Forecast> forecast, Quantity quantity) {
        Optional<Ensemble> spread = forecast.map(f -> f.spreads().get(quantity));
        return spread.map(s -> Texts.of("teardown.spent.range", figure(s.quantile(.1), quantity),
                figure(s.quantile(.9), quantity))).orElse(Texts.of("none"));
    }

    private static String figure(double value, Quantity quantity) {
        return quantity == Quantity.HOURS ? Figures.hours(value) : Figures.amount(value);
    }
}
