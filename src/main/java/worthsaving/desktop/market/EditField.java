package worthsaving.desktop.market;

import java.util.function.Consumer;
import javafx.scene.control.TextField;
import javafx.scene.input.KeyEvent;
import worthsaving.desktop.Shortcuts;

/** A field taken over by Enter or when it is left; while nothing is being typed, undo means the market's changes. */
final class EditField extends TextField {

    private String shown;

    EditField(MarketModel model, String id, String name, String text, Consumer<String> onEdit) {
        super(text);
        this.shown = text;
        setId(id);
        setAccessibleText(name);
        Runnable take = () -> {
            if (!getText().strip().equals(shown)) {
                shown = getText().strip();
                onEdit.accept(shown);
            }
        };
        setOnAction(e -> take.run());
        focusedProperty().addListener((o, was, is) -> {
            if (!is) {
                take.run();
            }
        });
        addEventFilter(KeyEvent.KEY_PRESSED, e -> {
            if (getText().strip().equals(shown) && Shortcuts.UNDO.keys().match(e)) {
                model.takeBack();
                e.consume();
            } else if (getText().strip().equals(shown) && Shortcuts.REDO.keys().match(e)) {
                model.doAgain();
                e.consume();
            }
        });
    }

    void show(String text) {
        shown = text;
        if (!getText().strip().equals(text)) {
            setText(text);
        }
    }
}
