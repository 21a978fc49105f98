package worthsaving.desktop.teardown;

import java.util.List;
import java.util.Optional;
import javafx.geometry.Side;
import javafx.scene.control.ContextMenu;
import javafx.scene.control.MenuItem;
import javafx.scene.control.TextField;
import worthsaving.desktop.Texts;

/** Something of the catalogue, searched by typing words of its name. */
final class SubjectField extends TextField {

    private static final int MOST = 10;

    private final ContextMenu found = new ContextMenu();
    private List<Subject> all = List.of();
    private Optional<Subject> chosen = Optional.empty();
    private boolean setting;

    SubjectField() {
        setId("line-subject");
        setPromptText(Texts.of("teardown.line.search"));
        setAccessibleText(Texts.of("teardown.line.subject"));
        found.setAutoFix(true);
        textProperty().addListener((o, was, is) -> {
            if (!setting) {
                chosen = all.stream().filter(s -> s.name().equalsIgnoreCase(is.strip())).findFirst();
                suggest();
            }
        });
        focusedProperty().addListener((o, was, is) -> {
            if (!is) {
                found.hide();
            }
        });
    }

    /** What may be chosen; a choice that is not among it is dropped. */
    void offer(List<Subject> subjects) {
        all = subjects;
        choose(chosen.filter(all::contains));
    }

    void choose(Optional<Subject> subject) {
        chosen = subject;
        setting = true;
        setText(subject.map(Subject::name).orElse(""));
        positionCaret(getText().length());
        setting = false;
        found.hide();
    }

    /** What is chosen, or the only thing that matches what is typed. */
    Optional<Subject> chosen() {
        List<Subject> matching = getText().isBlank() ? List.of() : Subject.search(all, getText());
        return chosen.or(() -> matching.size() == 1 ? Optional.of(matching.get(0)) : Optional.empty());
    }

    private void suggest() {
        List<Subject> matching = getText().isBlank() ? List.of() : Subject.search(all, getText());
        found.getItems().setAll(matching.stream().limit(MOST).map(this::item).toList());
        if (matching.isEmpty() || getScene() == null || chosen.isPresent()) {
            found.hide();
        } else if (!found.isShowing()) {
            found.show(this, Side.BOTTOM, 0, 0);
        }
    }

    private MenuItem item(Subject subject) {
        MenuItem item = new MenuItem(subject.name());
        item.setMnemonicParsing(false);
        item.setOnAction(e -> choose(Optional.of(subject)));
        return item;
    }
}
