package worthsaving.desktop.car;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.Slider;
import javafx.scene.control.Tooltip;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import worthsaving.desktop.Texts;
import worthsaving.desktop.Words;

/** The sliders. Everything follows while they are dragged; undo takes back a whole drag. */
final class LeverPanel extends VBox {

    private final CarModel model;
    private final List<Row> rows = new ArrayList<>();
    private boolean showing;

    LeverPanel(CarModel model) {
        super(5);
        this.model = model;
        getStyleClass().addAll("panel", "padded");
        getChildren().add(Words.explained(Words.plain(Texts.of("lever.title"), "subheading"), Texts.of("lever.why")));
        for (Lever lever : Lever.values()) {
            Row row = new Row(lever);
            rows.add(row);
            getChildren().add(row);
        }
        model.scenarioProperty().addListener((o, was, is) -> show());
    }

    private void show() {
        showing = true;
        rows.forEach(Row::show);
        showing = false;
    }

    private final class Row extends VBox {
        private final Lever lever;
        private final Slider slider = new Slider();
        private final Label value = Words.whole("", "subheading");
        private final Button reset = new Button(Texts.of("lever.reset"));

        Row(Lever lever) {
            super(1);
            this.lever = lever;
            Label name = Words.explained(Words.wrapped(lever.label()), lever.explanation());
            name.setLabelFor(slider);
            HBox.setHgrow(name, Priority.ALWAYS);
            name.setMaxWidth(Double.MAX_VALUE);
            reset.getStyleClass().add("plain");
            reset.setMinWidth(Region.USE_PREF_SIZE);
            reset.setTooltip(new Tooltip(Texts.of("lever.reset.why")));
            reset.managedProperty().bind(reset.visibleProperty());
            reset.setOnAction(e -> model.reset(lever));
            slider.setId("lever-" + lever.name().toLowerCase(Locale.ROOT));
            slider.setAccessibleText(lever.label());
            slider.setMin(lever.low());
            slider.setBlockIncrement(lever.step());
            slider.valueProperty().addListener((o, was, is) -> moved(is.doubleValue()));
            slider.valueChangingProperty().addListener((o, was, is) -> {
                if (!is) {
                    model.letGo();
                }
            });
            getChildren().addAll(new HBox(4, name, reset, value), slider);
        }

        void show() {
            double now = model.value(lever);
            slider.setMax(lever.high(model.given(lever)));
            if (!slider.isValueChanging()) {
                slider.setValue(now);
            }
            boolean unknown = lever == Lever.PRICE && now == 0 && !model.moved(lever);
            value.setText(unknown ? Texts.of("lever.no_ask") : lever.text(now, model.currency()));
            reset.setVisible(model.moved(lever));
        }

        private void moved(double to) {
            if (showing) {
                return;
            }
            model.drag(lever, lever.snap(to, model.given(lever)));
            if (!slider.isValueChanging()) {
                model.letGo();
            }
        }
    }
}
