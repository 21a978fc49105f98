package worthsaving.desktop;

import java.util.List;
import java.util.stream.Stream;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyCodeCombination;
import javafx.scene.input.KeyCombination;
import javafx.scene.input.KeyEvent;

/** Every keyboard shortcut of the window. */
public enum Shortcuts {
    OPEN(KeyCode.O),
    SHEET(KeyCode.P),
    COPY(KeyCode.C),
    QUIT(KeyCode.Q),
    UNDO(KeyCode.Z),
    REDO(KeyCode.Y),
    LOT(KeyCode.DIGIT1),
    CAR(KeyCode.DIGIT2),
    TEARDOWN(KeyCode.DIGIT3),
    MARKET(KeyCode.DIGIT4),
    CATALOGUE(KeyCode.DIGIT5),
    RECORD(KeyCode.DIGIT6),
    FIND(KeyCode.F),
    COMPARE(KeyCode.E),
    UNITS(KeyCode.U),
    KEYS(KeyCode.K),
    THEME(KeyCode.D),
    BIGGER(KeyCode.PLUS, KeyCode.EQUALS, KeyCode.ADD),
    SMALLER(KeyCode.MINUS, KeyCode.SUBTRACT),
    USUAL_SIZE(KeyCode.DIGIT0, KeyCode.NUMPAD0);

    private final List<KeyCombination> keys;

    /** The first code is the one that menus show; the others serve other keyboards. */
    Shortcuts(KeyCode... codes) {
        this.keys = Stream.of(codes)
                .<KeyCombination>map(code -> new KeyCodeCombination(
                        code, KeyCombination.SHORTCUT_DOWN, KeyCombination.SHIFT_ANY))
                .toList();
    }

    /** The one that menus show. */
    public KeyCombination keys() {
        return keys.get(0);
    }

    boolean matches(KeyEvent event) {
        return keys.stream().anyMatch(k -> k.match(event));
    }

    List<KeyCombination> otherKeys() {
        return keys.subList(1, keys.size());
    }
}
