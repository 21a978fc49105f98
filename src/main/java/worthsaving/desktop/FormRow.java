package worthsaving.desktop;

import java.util.function.Function;
import javafx.beans.property.StringProperty;
import javafx.scene.control.Label;
import javafx.scene.control.TextField;
import javafx.scene.layout.HBox;
import javafx.scene.layout.VBox;

/** A field with its name and, while what is in it cannot be used, what mends it. */
public final class FormRow extends VBox {

    private static final int COLUMNS = 10;

    private final TextField field = new TextField();
    private final Label fault = Words.wrapped("", "stop-words");

    /**
     * @param unit shown after the field; may be blank
     * @param check what is wrong with a text; blank when nothing is
     */
    public FormRow(String id, String name, String unit, String explanation, StringProperty value,
            Function<String, String> check) {
        super(2);
        Label label = Words.explained(Words.whole(name), explanation);
        label.setLabelFor(field);
        label.getStyleClass().add("name-column");
        field.setId(id);
        field.setPrefColumnCount(COLUMNS);
        field.setAccessibleText(name);
        field.textProperty().bindBidirectional(value);
        fault.setId(id + "-fault");
        HBox line = new HBox(8, label, field, Words.whole(unit, "soft"));
        line.getStyleClass().add("head");
        getChildren().addAll(line, fault);
        field.textProperty().addListener((o, was, is) -> show(check.apply(is)));
        show(check.apply(field.getText()));
    }

    private void show(String text) {
        fault.setText(text);
        fault.setVisible(!text.isEmpty());
        fault.setManaged(!text.isEmpty());
        field.setAccessibleHelp(text);
    }
}
