package worthsaving.desktop;

import javafx.scene.control.TextField;
import javafx.scene.input.KeyEvent;

/**
 * A field taken over by Enter or when it is left. While nothing is being typed, undo and redo mean the changes of its
 * screen and not the letters of the field.
 */
public abstract class EnteredField extends TextField {

    /** Nothing is called before someone types. */
    @SuppressWarnings("this-escape")
    protected EnteredField(String id, String name) {
        setId(id);
        setAccessibleText(name);
        setOnAction(e -> take());
        focusedProperty().addListener((o, was, is) -> {
            if (!is) {
                take();
            }
        });
        addEventFilter(KeyEvent.KEY_PRESSED, this::undo);
    }

    /** What stands here while nothing is being typed. */
    protected abstract String shown();

    /** Hands on what was typed, if it is something else. */
    protected abstract void take();

    protected abstract void takeBack();

    protected abstract void doAgain();

    /** Shows what stands here now; what was typed is gone. */
    protected final void refresh() {
        if (typed()) {
            setText(shown());
        }
    }

    private boolean typed() {
        return !getText().strip().equals(shown());
    }

    private void undo(KeyEvent event) {
        if (typed()) {
            return;
        }
        if (Shortcuts.UNDO.keys().match(event)) {
            takeBack();
            event.consume();
        } else if (Shortcuts.REDO.keys().match(event)) {
            doAgain();
            event.consume();
        }
    }
}
