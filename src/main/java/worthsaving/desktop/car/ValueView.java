package worthsaving.desktop.car;

import java.util.Comparator;
import java.util.List;
import javafx.geometry.HPos;
import javafx.geometry.Pos;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import worthsaving.desktop.CarNames;
import worthsaving.desktop.Figures;
import worthsaving.desktop.Texts;
import worthsaving.desktop.Words;
import worthsaving.valuation.ValueForecast;
import worthsaving.vehicle.Vehicle;

/** What it fetches once repaired, how that came about, and how far to trust it. */
final class ValueView extends VBox {

    private static final int MOST = 10;

    private final Button why;

    ValueView(WhyPane pane) {
        super(10);
        this.why = pane.button(Why.Topic.VALUE, "", Texts.of("value.title"));
        getStyleClass().add("tab-page");
        setId("value");
    }

    void show(CarPicture.Seen seen) {
        ValueForecast value = seen.appraisal().value();
        Label figure = Words.whole(Figures.money(value.mean()), "big-figure");
        figure.setId("value-mean");
        getChildren().setAll(
                Words.plain(Texts.of("value.title"), "subheading"),
                row(figure),
                Words.wrapped(Texts.of("value.interval", Figures.money(value.quantile(0.1)),
                        Figures.money(value.quantile(0.9)))));
        value.warnings().forEach(w -> getChildren().add(Words.wrapped(w, "notice")));
        getChildren().addAll(
                Words.explained(Words.plain(Texts.of("value.steps"), "subheading"), Texts.of("value.steps.why")),
                steps(value));
        if (!value.contributions().isEmpty()) {
            getChildren().addAll(Words.explained(Words.plain(Texts.of("value.parts"), "subheading"),
                    Texts.of("value.parts.why")), contributions(value.contributions(),
                            seen.appraisal().listing().vehicle()));
        }
        getChildren().add(Words.wrapped(Texts.of("value.model", value.modelName()), "soft"));
    }

    private HBox row(Label figure) {
        HBox row = new HBox(4, figure, why);
        row.setAlignment(Pos.CENTER_LEFT);
        return row;
    }

    private static GridPane steps(ValueForecast value) {
        GridPane grid = grid();
        int row = 0;
        for (ValueForecast.Step step : value.steps()) {
            Label factor = Words.whole(
                    row == 0 ? Figures.amount(value.base().amount()) : "\u00d7 " + Figures.number(step.factor(), 3));
            GridPane.setHalignment(factor, HPos.RIGHT);
            Label why = Words.wrapped(step.why(), "soft", "name-column");
            GridPane.setHgrow(why, Priority.ALWAYS);
            grid.addRow(row++, Words.whole(step.name()), factor, why);
        }
        return grid;
    }

    private static GridPane contributions(List<ValueForecast.Contribution> all, Vehicle car) {
        GridPane grid = grid();
        List<ValueForecast.Contribution> heaviest = all.stream()
                .sorted(Comparator.comparingDouble(c -> -Math.abs(c.money().amount())))
                .limit(MOST).toList();
        double most = heaviest.stream().mapToDouble(c -> Math.abs(c.money().amount())).max().orElse(1);
        int row = 0;
        for (ValueForecast.Contribution c : heaviest) {
            Label money = Words.whole((c.money().amount() > 0 ? "+" : "") + Figures.amount(c.money().amount()),
                    c.money().amount() < 0 ? "below-zero" : "plain-figure");
            GridPane.setHalignment(money, HPos.RIGHT);
            PlusMinusBar bar = new PlusMinusBar(c.money().amount() / Math.max(1, most));
            GridPane.setHgrow(bar, Priority.ALWAYS);
            grid.addRow(row++, Words.whole(c.feature()), Words.plain(named(c.value(), car)), money, bar);
        }
        return grid;
    }

    /** Price data spell makes and models in lower case. */
    private static String named(String value, Vehicle car) {
        return value.equals(car.make().orElse("") + " " + car.model().orElse("")) ? CarNames.capitals(value) : value;
    }

    private static GridPane grid() {
        GridPane grid = new GridPane();
        grid.setHgap(14);
        grid.setVgap(4);
        return grid;
    }
}
