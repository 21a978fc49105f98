package worthsaving.desktop.lot;

import javafx.geometry.Pos;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.TextArea;
import javafx.scene.input.KeyCode;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import worthsaving.desktop.Texts;
import worthsaving.desktop.Words;

/** One field to paste an advert into; the car is read, judged, added to the lot and opened. */
final class AdvertBox extends VBox {

    private static final int ROWS = 2;

    AdvertBox(LotModel model) {
        super(4);
        TextArea text = new TextArea();
        text.setId("advert-text");
        text.setPrefRowCount(ROWS);
        text.setWrapText(true);
        text.setMinHeight(Region.USE_PREF_SIZE);
        text.setPromptText(Texts.of("advert.prompt"));
        text.setAccessibleText(Texts.of("advert.prompt"));
        Button read = new Button(Texts.of("advert.read"));
        read.setId("advert-read");
        read.setMinWidth(Region.USE_PREF_SIZE);
        read.disableProperty().bind(text.textProperty().isEmpty());
        Label notes = Words.wrapped("", "notice");
        notes.textProperty().bind(model.adverts().notesProperty());
        notes.visibleProperty().bind(notes.textProperty().isNotEmpty());
        notes.managedProperty().bind(notes.visibleProperty());
        read.setOnAction(e -> {
            model.adverts().read(text.getText());
            text.clear();
        });
        text.setOnKeyPressed(e -> {
            if (e.getCode() == KeyCode.ENTER && e.isShortcutDown() && !text.getText().isEmpty()) {
                read.fire();
                e.consume();
            }
        });
        HBox row = new HBox(8, text, read);
        row.setAlignment(Pos.CENTER_LEFT);
        HBox.setHgrow(text, Priority.ALWAYS);
        getChildren().addAll(row, notes);
    }
}
