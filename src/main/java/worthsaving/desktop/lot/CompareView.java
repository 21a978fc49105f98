package worthsaving.desktop.lot;

import java.util.List;
import java.util.Locale;
import java.util.function.Function;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.geometry.Pos;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.layout.ColumnConstraints;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import worthsaving.deal.WayOut;
import worthsaving.desktop.Texts;
import worthsaving.desktop.Units;
import worthsaving.desktop.Words;
import worthsaving.ranking.Appraisal;

/** A few cars side by side; what differs stands out in words and weight, what is better has a star. */
final class CompareView extends VBox {

    private static final double NAMES_SHARE = 16;

    private final GridPane grid = new GridPane();
    private final ReadOnlyObjectProperty<Units> units;
    private final Function<String, String> itemName;
    private final CompareModel model;

    CompareView(CompareModel model, Function<String, String> itemName, ReadOnlyObjectProperty<Units> units) {
        super(8);
        this.model = model;
        this.itemName = itemName;
        this.units = units;
        setId("compare");
        getStyleClass().addAll("panel", "padded");
        Button back = new Button(Texts.of("compare.back"));
        back.setId("compare-back");
        back.setMinWidth(Region.USE_PREF_SIZE);
        back.setOnAction(e -> model.close());
        Label title = Words.explained(Words.plain(Texts.of("compare.title"), "heading"), Texts.of("compare.why"));
        HBox.setHgrow(title, Priority.ALWAYS);
        title.setMaxWidth(Double.MAX_VALUE);
        HBox top = new HBox(10, title, Words.whole(Texts.of("compare.legend"), "soft"), back);
        top.setAlignment(Pos.CENTER_LEFT);
        ScrollPane scroll = new ScrollPane(grid);
        scroll.setFitToWidth(true);
        VBox.setVgrow(scroll, Priority.ALWAYS);
        getChildren().addAll(top, scroll);
        visibleProperty().bind(model.carsProperty().isNotEqualTo(List.of()));
        managedProperty().bind(visibleProperty());
        model.carsProperty().addListener((o, was, is) -> show());
        units.addListener((o, was, is) -> show());
    }

    private void show() {
        List<Appraisal> cars = model.carsProperty().get();
        grid.getChildren().clear();
        grid.getColumnConstraints().clear();
        if (cars.isEmpty()) {
            return;
        }
        ColumnConstraints names = new ColumnConstraints();
        names.setPercentWidth(NAMES_SHARE);
        grid.getColumnConstraints().add(names);
        cars.forEach(c -> {
            ColumnConstraints column = new ColumnConstraints();
            column.setPercentWidth((100 - NAMES_SHARE) / cars.size());
            grid.getColumnConstraints().add(column);
        });
        Comparison comparison = Comparison.of(cars, itemName, units.get());
        int column = 1;
        for (String car : comparison.cars()) {
            grid.add(cell(car, "subheading"), column++, 0);
        }
        int row = 1;
        for (Comparison.Line line : comparison.lines()) {
            line(row++, line);
        }
    }

    private void line(int row, Comparison.Line line) {
        Label name = cell(name(line.key()), "soft");
        grid.add(name, 0, row);
        for (int i = 0; i < line.texts().size(); i++) {
            boolean best = line.best().contains(i);
            Label text = cell(best ? Texts.of("ways.best", line.texts().get(i)) : line.texts().get(i),
                    best ? "best-way" : line.differs() ? "plain-figure" : "soft");
            text.setId("compare-" + line.key() + "-" + i);
            grid.add(text, i + 1, row);
        }
        if (!line.differs()) {
            name.setText(Texts.of("compare.same", name.getText()));
        }
    }

    private static String name(String key) {
        return key.startsWith("way.") ? Texts.of("compare.way", WayOut.valueOf(key.substring(4)).label())
                : Texts.of("compare.line." + key.toLowerCase(Locale.ROOT));
    }

    private static Label cell(String text, String style) {
        Label label = Words.wrapped(text, "cell-of-comparison", style);
        label.setMaxWidth(Double.MAX_VALUE);
        return label;
    }
}
