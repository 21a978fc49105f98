package worthsaving.desktop;

import javafx.beans.binding.StringExpression;
import javafx.scene.control.Control;
import javafx.scene.control.Label;
import javafx.scene.control.Tooltip;
import javafx.scene.layout.Region;

/** Labels in the few forms that screens use. */
public final class Words {

    private Words() {}

    /** A label that wraps. */
    public static Label wrapped(String text, String... styles) {
        Label label = plain(text, styles);
        label.setWrapText(true);
        label.setMinHeight(Region.USE_PREF_SIZE);
        return label;
    }

    /** A label on one line that is never cut. */
    public static Label whole(String text, String... styles) {
        Label label = plain(text, styles);
        label.setMinWidth(Region.USE_PREF_SIZE);
        return label;
    }

    public static Label plain(String text, String... styles) {
        Label label = new Label(text);
        label.getStyleClass().addAll(styles);
        return label;
    }

    /** A warning that is there while there is something to warn of. */
    public static Label trouble(StringExpression text) {
        Label trouble = new Label();
        trouble.getStyleClass().addAll("notice", "failed");
        trouble.setWrapText(true);
        trouble.textProperty().bind(text);
        trouble.visibleProperty().bind(text.isNotEmpty());
        trouble.managedProperty().bind(trouble.visibleProperty());
        return trouble;
    }

    /** Adds what a term means, for the pointer and for a screen reader. */
    public static Label explained(Label label, String meaning) {
        tip(label, meaning);
        label.setAccessibleHelp(meaning);
        return label;
    }

    /** Says more under the pointer; a tooltip that is there already gets the new words, since making one is slow. */
    public static void tip(Control control, String words) {
        if (control.getTooltip() == null) {
            control.setTooltip(new Tooltip(words));
        } else {
            control.getTooltip().setText(words);
        }
    }
}
