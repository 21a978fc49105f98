package worthsaving.desktop;

import javafx.scene.Parent;
import javafx.scene.control.ButtonType;
import javafx.scene.control.Dialog;
import javafx.scene.layout.GridPane;
import javafx.stage.Window;

/** Every shortcut of the window in one place. */
final class ShortcutsBox {

    private ShortcutsBox() {}

    /** @param like whose colours and text size the box takes */
    static void show(Window owner, Parent like) {
        Dialog<ButtonType> box = new Dialog<>();
        box.initOwner(owner);
        box.setTitle(Texts.of("menu", Shortcuts.KEYS));
        box.getDialogPane().getStylesheets().setAll(like.getStylesheets());
        box.getDialogPane().setStyle(like.getStyle());
        box.getDialogPane().setContent(list());
        box.getDialogPane().getButtonTypes().add(ButtonType.CLOSE);
        box.show();
    }

    private static GridPane list() {
        GridPane grid = new GridPane();
        grid.setId("shortcuts");
        grid.setHgap(24);
        grid.setVgap(4);
        int row = 0;
        for (Shortcuts shortcut : Shortcuts.values()) {
            grid.addRow(row++, Words.whole(shortcut.keys().getDisplayText(), "subheading"),
                    Words.whole(Texts.of("menu", shortcut)));
        }
        for (String key : new String[] {"open_car", "drop", "why", "tick", "slider"}) {
            grid.addRow(row++, Words.whole(Texts.of("keys.press." + key), "subheading"),
                    Words.whole(Texts.of("keys.does." + key)));
        }
        return grid;
    }
}
