package worthsaving.desktop.record;

import javafx.beans.binding.Bindings;
import javafx.geometry.Insets;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.layout.BorderPane;
import javafx.scene.layout.VBox;
import worthsaving.desktop.Look;
import worthsaving.desktop.Texts;
import worthsaving.desktop.Words;

/** The screen of finished cars. */
public final class RecordView extends BorderPane {

    private static final double FORM = 25;

    public RecordView(RecordModel model, Look look) {
        setId("record");
        getStyleClass().add("screen");
        Label example = Words.wrapped(Texts.of("record.example"), "notice");
        example.setId("record-example");
        example.setMaxWidth(Double.MAX_VALUE);
        example.visibleProperty().bind(model.exampleProperty());
        example.managedProperty().bind(example.visibleProperty());
        Label none = Words.wrapped(Texts.of("record.none"), "soft");
        none.visibleProperty().bind(Bindings.isEmpty(model.rows()));
        none.managedProperty().bind(none.visibleProperty());
        Label caution = Words.wrapped("", "subheading");
        caution.setId("record-caution");
        caution.textProperty().bind(Bindings.createStringBinding(
                () -> model.trackProperty().get() == null || model.rows().isEmpty() ? ""
                        : model.trackProperty().get().caution(), model.trackProperty(), model.rows()));
        caution.visibleProperty().bind(caution.textProperty().isNotEmpty());
        caution.managedProperty().bind(caution.visibleProperty());
        FinishedTable table = new FinishedTable(model);
        table.visibleProperty().bind(Bindings.isNotEmpty(model.rows()));
        table.managedProperty().bind(table.visibleProperty());
        Label scores = Words.plain(Texts.of("record.scores"), "heading");
        scores.visibleProperty().bind(table.visibleProperty());
        scores.managedProperty().bind(scores.visibleProperty());
        VBox page = new VBox(10, Words.plain(Texts.of("record.title"), "heading"), example,
                Words.trouble(model.troubleProperty()), none, caution, table, scores, new ScoreCards(model),
                new LessonsPane(model));
        ScrollPane scroll = scroll(page);
        scroll.setId("record-page");
        setCenter(scroll);
        ScrollPane form = scroll(new FinishForm(model));
        form.prefWidthProperty().bind(look.textSizeProperty().multiply(FORM));
        BorderPane.setMargin(form, new Insets(0, 0, 0, 8));
        setRight(form);
    }

    private static ScrollPane scroll(VBox content) {
        ScrollPane scroll = new ScrollPane(content);
        scroll.setFitToWidth(true);
        return scroll;
    }
}
