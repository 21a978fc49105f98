package worthsaving.desktop;

import java.util.EnumSet;
import java.util.HashSet;
import java.util.Set;
import javafx.scene.Scene;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;

/** Keeps a shortcut that is held down from being carried out again and again, where once is all that is meant. */
final class HeldKeys {

    private static final Set<Shortcuts> ONCE = EnumSet.complementOf(EnumSet.of(Shortcuts.UNDO, Shortcuts.REDO));

    private final Set<KeyCode> down = new HashSet<>();

    private HeldKeys() {}

    static void silence(Scene scene) {
        HeldKeys held = new HeldKeys();
        scene.addEventFilter(KeyEvent.KEY_PRESSED, held::pressed);
        scene.addEventFilter(KeyEvent.KEY_RELEASED, e -> held.down.remove(e.getCode()));
        scene.windowProperty().addListener((o, was, is) -> {
            if (is != null) {
                is.focusedProperty().addListener((f, had, has) -> held.down.clear());
            }
        });
        if (scene.getWindow() != null) {
            scene.getWindow().focusedProperty().addListener((f, had, has) -> held.down.clear());
        }
    }

    private void pressed(KeyEvent event) {
        if (!down.add(event.getCode()) && ONCE.stream().anyMatch(s -> s.matches(event))) {
            event.consume();
        }
    }
}
