package worthsaving.desktop;

import java.util.Locale;
import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Region;
import worthsaving.deal.Verdict;

/** A verdict in a word, a shape and a colour, so that it reads without any one of them. */
public final class VerdictBadge extends HBox {

    private final Label word = new Label();

    public VerdictBadge() {
        Region mark = new Region();
        mark.getStyleClass().add("mark");
        getChildren().addAll(mark, word);
        setMaxWidth(USE_PREF_SIZE);
        setMinWidth(USE_PREF_SIZE);
    }

    public void show(Verdict.Kind kind) {
        getStyleClass().setAll("verdict", kind.name().toLowerCase(Locale.ROOT));
        word.setText(Texts.of("verdict", kind));
        setAccessibleText(word.getText());
    }
}
