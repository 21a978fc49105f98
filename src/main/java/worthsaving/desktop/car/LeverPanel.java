package worthsaving.desktop.car;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import javafx.css.PseudoClass;
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
import worthsaving.sensitivity.Turning;

/** The sliders. Everything follows while they are dragged; undo takes back a whole drag. */
final class LeverPanel extends VBox {

    private static final PseudoClass OUTDATED = PseudoClass.getPseudoClass("outdated");

    private final CarModel model;
    private final List<Row> levers = new ArrayList<>();
    private final List<Row> items = new ArrayList<>();
    private final VBox itemRows = new VBox(7);
    private boolean showing;

    LeverPanel(CarModel model) {
        super(7);
        this.model = model;
        getStyleClass().addAll("panel", "padded", "levers");
        getChildren().add(Words.explained(Words.plain(Texts.of("lever.title"), "subheading"), Texts.of("lever.why")));
        for (Lever lever : Lever.values()) {
            Row row = new Row(lever);
            levers.add(row);
            getChildren().add(row);
        }
        getChildren().addAll(Words.explained(Words.wrapped(Texts.of("dial.items"), "subheading"),
                Texts.of("dial.item.why")), itemRows);
        model.scenarioProperty().addListener((o, was, is) -> show());
        model.pictureProperty().addListener((o, was, is) -> show());
        model.marksProperty().addListener((o, was, is) -> mark());
        model.marksOutdatedProperty().addListener((o, was, is) -> pseudoClassStateChanged(OUTDATED, is));
    }

    private void show() {
        List<Dial> wanted = model.dials().stream().filter(ItemDial.class::isInstance).toList();
        if (!wanted.equals(items.stream().map(r -> r.dial).toList())) {
            items.clear();
            wanted.forEach(dial -> items.add(new Row(dial)));
            itemRows.getChildren().setAll(items);
            mark();
        }
        showing = true;
        levers.forEach(Row::show);
        items.forEach(Row::show);
        showing = false;
    }

    private void mark() {
        Map<Dial, Turning> marks = model.marksProperty().get();
        levers.forEach(row -> row.mark(marks));
        items.forEach(row -> row.mark(marks));
    }

    private final class Row extends VBox {
        private final Dial dial;
        private final MarkedSlider marked = new MarkedSlider();
        private final Slider slider = marked.slider();
        private final Label value = Words.whole("", "subheading");
        private final Label turning = Words.wrapped("", "turning");
        private final Button reset = new Button(Texts.of("lever.reset"));

        Row(Dial dial) {
            super(1);
            this.dial = dial;
            Label name = Words.explained(Words.wrapped(dial.label()), dial.explanation());
            name.setLabelFor(slider);
            HBox.setHgrow(name, Priority.ALWAYS);
            name.setMaxWidth(Double.MAX_VALUE);
            reset.getStyleClass().add("plain");
            reset.setMinWidth(Region.USE_PREF_SIZE);
            reset.setTooltip(new Tooltip(Texts.of("lever.reset.why")));
            reset.managedProperty().bind(reset.visibleProperty());
            reset.setOnAction(e -> model.reset(dial));
            slider.setId(dial.id());
            slider.setAccessibleText(dial.label());
            slider.setMin(dial.low());
            slider.setBlockIncrement(dial.step());
            turning.setId("turning-" + dial.id());
            slider.valueProperty().addListener((o, was, is) -> moved(is.doubleValue()));
            slider.valueChangingProperty().addListener((o, was, is) -> {
                if (!is) {
                    model.letGo();
                }
            });
            getChildren().addAll(new HBox(4, name, reset, value), marked, turning);
        }

        void show() {
            double now = model.value(dial);
            slider.setMax(dial.high(model.given(dial)));
            if (!slider.isValueChanging()) {
                slider.setValue(now);
            }
            boolean unknown = dial == Lever.PRICE && now == 0 && !model.moved(dial);
            value.setText(unknown ? Texts.of("lever.no_ask") : dial.text(now, model.currency()));
            reset.setVisible(model.moved(dial));
        }

        void mark(Map<Dial, Turning> marks) {
            Turning mark = marks.get(dial);
            turning.setText(mark == null ? Texts.of("turning.reckoning")
                    : TurningWords.of(dial, mark, model.currency()));
            slider.setAccessibleHelp(turning.getText());
            if (mark != null) {
                marked.mark(mark.at());
            }
        }

        private void moved(double to) {
            if (showing) {
                return;
            }
            model.drag(dial, dial.snap(to, model.given(dial)));
            if (!slider.isValueChanging()) {
                model.letGo();
            }
        }
    }
}
