package worthsaving.desktop.car;

import java.util.Locale;
import javafx.geometry.HPos;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.control.Tooltip;
import javafx.scene.input.KeyCode;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import worthsaving.desktop.Texts;
import worthsaving.desktop.Words;

/** How the figure last asked about comes about; follows the car while it is open. */
final class WhyPane extends VBox {

    private final CarModel model;
    private final Label title = Words.wrapped("", "subheading");
    private final Button close = new Button(Texts.of("why.close"));
    private final GridPane lines = new GridPane();
    private Why.Topic topic = Why.Topic.MOST;
    private String id = "";

    WhyPane(CarModel model) {
        super(4);
        this.model = model;
        setId("why");
        getStyleClass().addAll("panel", "padded", "why");
        title.setId("why-title");
        close.setId("why-close");
        close.getStyleClass().add("plain");
        close.setMinWidth(Region.USE_PREF_SIZE);
        close.setOnAction(e -> show(false));
        HBox.setHgrow(title, Priority.ALWAYS);
        title.setMaxWidth(Double.MAX_VALUE);
        lines.setHgap(12);
        lines.setVgap(2);
        ScrollPane scroll = new ScrollPane(lines);
        scroll.setFitToWidth(true);
        VBox.setVgrow(scroll, Priority.ALWAYS);
        getChildren().addAll(new HBox(8, title, close), scroll);
        setOnKeyPressed(e -> {
            if (e.getCode() == KeyCode.ESCAPE) {
                show(false);
                e.consume();
            }
        });
        model.pictureProperty().addListener((o, was, is) -> refresh());
        show(false);
    }

    /**
     * A button that opens the reason of a figure.
     *
     * @param name of the figure, for a screen reader
     */
    Button button(Why.Topic about, String item, String name) {
        Button why = new Button(Texts.of("why"));
        why.setId("why-" + (item.isEmpty() ? about.name().toLowerCase(Locale.ROOT) : item));
        why.getStyleClass().addAll("plain", "why-button");
        why.setMinWidth(Region.USE_PREF_SIZE);
        why.setTooltip(new Tooltip(Texts.of("why.tip", name)));
        why.setAccessibleText(Texts.of("why.tip", name));
        why.setOnAction(e -> {
            topic = about;
            id = item;
            show(true);
            refresh();
            close.requestFocus();
        });
        return why;
    }

    /** As high as its lines, within what the screen allows it; the page above gives way and scrolls. */
    @Override
    protected double computeMinHeight(double width) {
        return Math.min(computePrefHeight(width), getMaxHeight());
    }

    private void show(boolean open) {
        setVisible(open);
        setManaged(open);
    }

    private void refresh() {
        if (isVisible()) {
            model.seen().filter(this::isShown).ifPresentOrElse(
                    seen -> show(model.whys().of(topic, id, seen)), () -> show(false));
        }
    }

    /** An item may no longer be among those shown. */
    private boolean isShown(CarPicture.Seen seen) {
        return topic != Why.Topic.ITEM || seen.items().stream().anyMatch(i -> i.id().equals(id));
    }

    private void show(Why why) {
        title.setText(why.title());
        lines.getChildren().clear();
        int row = 0;
        for (Why.Part part : why.parts()) {
            Label text = Words.wrapped(part.text());
            GridPane.setHgrow(text, Priority.ALWAYS);
            Label figure = Words.whole(part.figure(), "subheading");
            GridPane.setHalignment(figure, HPos.RIGHT);
            Label label = Words.whole(part.label().map(l -> Texts.of("label", l)).orElse(""),
                    part.label().isPresent() ? "source-mark" : "soft");
            part.label().ifPresent(l -> Words.explained(label, Texts.of("label.explain", l)));
            text.setAccessibleText(part.spoken());
            lines.addRow(row++, text, figure, label);
        }
    }
}
