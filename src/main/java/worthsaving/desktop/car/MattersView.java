package worthsaving.desktop.car;

import java.util.List;
import javafx.geometry.HPos;
import javafx.geometry.Pos;
import javafx.scene.control.Button;
import javafx.scene.control.ComboBox;
import javafx.scene.control.Label;
import javafx.scene.control.ProgressBar;
import javafx.scene.layout.ColumnConstraints;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import worthsaving.desktop.Choices;
import worthsaving.desktop.Figures;
import worthsaving.desktop.Texts;
import worthsaving.desktop.Words;
import worthsaving.sensitivity.DealTornado.Figure;

/** What the expected profit hangs on: each figure moved alone, then two of them together. */
final class MattersView extends VBox {

    private static final double NAMES_SHARE = 32;

    private final MattersModel model;
    private final Label title = Words.wrapped("", "subheading");
    private final GridPane bars = new GridPane();
    private final FlowPane choice = new FlowPane(8, 6);
    private final MapChart chart = new MapChart();
    private final Label same = Words.wrapped(Texts.of("matters.same"), "notice");
    private final VBox content;

    MattersView(MattersModel model) {
        super(10);
        this.model = model;
        getStyleClass().add("tab-page");
        setId("matters");
        bars.setHgap(12);
        bars.setVgap(4);
        ColumnConstraints names = new ColumnConstraints();
        names.setPercentWidth(NAMES_SHARE);
        bars.getColumnConstraints().add(names);
        choice.setAlignment(Pos.CENTER_LEFT);
        content = new VBox(10, Words.explained(title, Texts.of("matters.why")), bars,
                Words.explained(Words.plain(Texts.of("matters.map"), "subheading"), Texts.of("matters.map.why")),
                choice, same, chart);
        content.visibleProperty().bind(model.mattersProperty().isNotNull());
        getChildren().addAll(progress(), Words.trouble(model.troubleProperty()), content);
        model.mattersProperty().addListener((o, was, is) -> show(is));
    }

    private HBox progress() {
        ProgressBar bar = new ProgressBar();
        bar.progressProperty().bind(model.doneProperty());
        bar.setAccessibleText(Texts.of("matters.reckoning"));
        Button stop = new Button(Texts.of("lot.stop"));
        stop.getStyleClass().add("plain");
        stop.setOnAction(e -> model.cancel());
        HBox box = new HBox(8, bar, Words.whole(Texts.of("matters.reckoning"), "soft"), stop);
        box.setAlignment(Pos.CENTER_LEFT);
        box.visibleProperty().bind(model.busyProperty());
        box.managedProperty().bind(box.visibleProperty());
        return box;
    }

    private void show(Matters matters) {
        title.setText(Texts.of("matters.title", matters.way().label(), Figures.money(matters.price()),
                Figures.amount(matters.base())));
        bars.getChildren().clear();
        double least = Math.min(0, matters.bars().stream().mapToDouble(Matters.Bar::least).min().orElse(0));
        double greatest = Math.max(0, matters.bars().stream().mapToDouble(Matters.Bar::greatest).max().orElse(0));
        int row = 0;
        for (String head : List.of("matters.what", "matters.low", "matters.swing", "matters.high")) {
            Label label = Words.explained(Words.whole(Texts.of(head), "soft"), Texts.of(head + ".why"));
            bars.add(label, row++, 0);
        }
        row = 1;
        for (Matters.Bar bar : matters.bars()) {
            line(row++, bar, matters, least, greatest);
        }
        choices(matters);
        matters.map().ifPresent(map -> chart.show(map, matters.words()));
        chart.setVisible(matters.map().isPresent());
        same.setVisible(matters.map().isEmpty());
        same.setManaged(same.isVisible());
    }

    private void line(int row, Matters.Bar bar, Matters matters, double least, double greatest) {
        Label name = Words.wrapped(matters.words().name(bar.figure()), "name-column");
        SwingBar swing = new SwingBar(bar.least(), bar.greatest(), matters.base(), least, greatest);
        GridPane.setHgrow(swing, Priority.ALWAYS);
        Label low = end(matters, bar.figure(), bar.figure().input().low(), bar.atLow());
        Label high = end(matters, bar.figure(), bar.figure().input().high(), bar.atHigh());
        GridPane.setHalignment(low, HPos.RIGHT);
        bars.addRow(row, name, low, swing, high);
    }

    private static Label end(Matters matters, Figure figure, double value, double profit) {
        return Words.whole(Texts.of("matters.end", matters.words().value(figure, value), Figures.amount(profit)),
                profit < 0 ? "below-zero" : "plain-figure");
    }

    private void choices(Matters matters) {
        choice.getChildren().clear();
        matters.map().ifPresent(map -> {
            ComboBox<Figure> across = box("matters-across", matters, map.across());
            ComboBox<Figure> up = box("matters-up", matters, map.up());
            across.valueProperty().addListener((o, was, is) -> choose(across, up));
            up.valueProperty().addListener((o, was, is) -> choose(across, up));
            choice.getChildren().addAll(Words.whole(Texts.of("matters.across")), across,
                    Words.whole(Texts.of("matters.up")), up);
        });
    }

    private void choose(ComboBox<Figure> across, ComboBox<Figure> up) {
        boolean alike = across.getValue().equals(up.getValue());
        same.setVisible(alike);
        same.setManaged(alike);
        if (!alike) {
            model.choose(Matters.key(across.getValue()), Matters.key(up.getValue()));
        }
    }

    private static ComboBox<Figure> box(String id, Matters matters, Figure now) {
        ComboBox<Figure> box = Choices.box(matters.figures(), now, matters.words()::name, f -> {});
        box.setId(id);
        box.getStyleClass().add("choice-of-figure");
        box.setAccessibleText(Texts.of("matters.choice"));
        return box;
    }
}
