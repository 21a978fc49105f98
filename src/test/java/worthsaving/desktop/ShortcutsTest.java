package worthsaving.desktop;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import javafx.scene.input.KeyCombination;
import org.junit.jupiter.api.Test;

class ShortcutsTest {

    @Test
    void no_two_do_different_things() {
        List<KeyCombination> all = new ArrayList<>();
        for (Shortcuts shortcut : Shortcuts.values()) {
            all.add(shortcut.keys());
            all.addAll(shortcut.otherKeys());
        }
        assertThat(all).doesNotHaveDuplicates();
    }
}
