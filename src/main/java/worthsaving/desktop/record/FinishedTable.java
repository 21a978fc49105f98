package worthsaving.desktop.record;

import java.util.List;
import java.util.OptionalDouble;
import java.util.function.Function;
import javafx.collections.ListChangeListener;
import javafx.geometry.HPos;
import javafx.scene.control.Label;
import javafx.scene.layout.ColumnConstraints;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import worthsaving.desktop.CarNames;
import worthsaving.desktop.Figures;
import worthsaving.desktop.Texts;
import worthsaving.desktop.Words;
import worthsaving.record.Quantity;

/** Finished cars: of each quantity what came, and below it what was forecast. */
final class FinishedTable extends GridPane {

    private final RecordModel model;

    /** A column of figures. */
    private record Column(String key, Function<FinishedRow, OptionalDouble> forecast, Function<FinishedRow, Double> came,
            Function<FinishedRow, Boolean> held) {}

    FinishedTable(RecordModel model) {
        this.model = model;
        setId("record-table");
        getStyleClass().addAll("panel", "padded");
        setHgap(18);
        setVgap(5);
        ColumnConstraints name = new ColumnConstraints();
        name.setHgrow(Priority.ALWAYS);
        getColumnConstraints().add(name);
        model.rows().addListener((ListChangeListener<FinishedRow>) c -> show());
        show();
    }

    private static List<Column> columns() {
        return List.of(quantity("value", Quantity.VALUE), quantity("cost", Quantity.COST), quantity("hours", Quantity.HOURS),
                quantity("days", Quantity.DAYS),
                new Column("profit", FinishedRow::forecastProfit, FinishedRow::profit, r -> true));
    }

    private static Column quantity(String key, Quantity q) {
        return new Column(key, r -> r.forecast(q), r -> r.came(q), r -> r.held(q));
    }

    private void show() {
        getChildren().clear();
        add(Words.plain(Texts.of("record.car", model.ground().settings().terms().currency().getCurrencyCode()), "soft"), 0, 0);
        List<Column> columns = columns();
        for (int c = 0; c < columns.size(); c++) {
            String key = columns.get(c).key();
            Label head = Words.explained(Words.whole(Texts.of("record.head." + key), "soft"), Texts.of("record.explain." + key));
            right(head);
            add(head, c + 1, 0);
        }
        int line = 1;
        for (FinishedRow row : model.rows()) {
            Label name = Words.wrapped(CarNames.title(row.of().listing().vehicle()));
            Label days = Words.plain(Texts.of("record.dates", row.of().id(), row.actual().bought().toString(),
                    row.actual().sold().toString()), "soft");
            add(new VBox(name, days), 0, line);
            for (int c = 0; c < columns.size(); c++) {
                add(figures(row, columns.get(c)), c + 1, line);
            }
            line++;
        }
    }

    private static VBox figures(FinishedRow row, Column column) {
        boolean hours = column.key().equals("hours");
        double came = column.came().apply(row);
        Label figure = Words.whole(hours ? Figures.hours(came) : Figures.amount(came), "subheading");
        if (column.key().equals("profit") && came < 0) {
            figure.getStyleClass().add("below-zero");
        }
        OptionalDouble forecast = column.forecast().apply(row);
        String said = forecast.isEmpty() ? Texts.of("record.no_forecast")
                : hours ? Figures.hours(forecast.getAsDouble()) : Figures.amount(forecast.getAsDouble());
        Label under = Words.whole(Texts.of(column.held().apply(row) ? "record.forecast" : "record.forecast.missed", said),
                "soft");
        if (!column.held().apply(row)) {
            Words.explained(under, Texts.of("record.missed.why"));
        }
        VBox box = new VBox(figure, under);
        box.getStyleClass().add("right-box");
        return box;
    }

    private static void right(Label head) {
        setHalignment(head, HPos.RIGHT);
    }
}
